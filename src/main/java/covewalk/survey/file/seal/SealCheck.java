package covewalk.survey.file.seal;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.disk.RowBytes;
import covewalk.survey.file.disk.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Tells what became of a survey since it was sealed. Needs no lock and writes nothing. Of the logs and the rows set
 * aside, which are only ever added to, the part that was there is compared; of all other files the whole.
 */
public final class SealCheck {

    private static final Set<String> GROWING = Set.of(FileNames.LOG, FileNames.PUNCH, FileNames.SET_ASIDE);

    private final Path folder;
    private final SealEntry now;
    private final Map<String, SealedFile> files;

    private SealCheck(Path folder) throws IOException {
        this.folder = folder;
        this.now = SealedFiles.in(folder);
        this.files = now.files().stream().collect(Collectors.toMap(SealedFile::name, Function.identity()));
    }

    /**
     * Compares with all seals in the folder, oldest first.
     *
     * @return at least one; refused where the survey was never sealed or its seals cannot be read
     */
    public static Outcome<List<Verified>> bySeals(Path folder) throws IOException {
        Outcome<List<SealEntry>> seals = seals(folder);
        if (seals.refused()) {
            return Outcome.refused(seals.problems());
        }
        if (seals.value().orElseThrow().isEmpty()) {
            return Outcome.refused(Problem.refusal("seal.never"));
        }
        SealCheck check = new SealCheck(folder);
        List<Verified> verified = new ArrayList<>();
        for (SealEntry seal : seals.value().orElseThrow()) {
            verified.add(check.against(seal));
        }
        return Outcome.of(verified);
    }

    /**
     * Compares with the code printed on a report. Where all is as it was then, the seals in the folder are not needed.
     *
     * @param typed the code as somebody typed it from paper
     * @return refused where nothing was sealed with this code or the seals cannot be read
     */
    public static Outcome<Verified> byCode(Path folder, String typed) throws IOException {
        Optional<String> code = SealEntry.codeTyped(typed);
        if (code.isEmpty()) {
            return Outcome.refused(Problem.refusal("seal.no-code", CsvText.oneLine(typed)));
        }
        Outcome<List<SealEntry>> seals = seals(folder);
        if (Files.isDirectory(folder)) {
            SealCheck check = new SealCheck(folder);
            if (check.now.code().equals(code.get())) {
                return Outcome.of(new Verified(code.get(), List.of()));
            }
            Optional<SealEntry> seal = seals.value().orElse(List.of()).stream().filter(one -> one.code().equals(code.get())).findFirst();
            if (seal.isPresent()) {
                return Outcome.of(check.against(seal.get()));
            }
        }
        return Outcome.refused(seals.refused() ? seals.problems() : List.of(Problem.refusal("seal.unknown", code.get())));
    }

    private static Outcome<List<SealEntry>> seals(Path folder) throws IOException {
        return Files.isDirectory(folder) ? new SealFile(folder).read() : Outcome.refused(Problem.refusal("folder.missing"));
    }

    private Verified against(SealEntry seal) throws IOException {
        List<FileChange> changes = new ArrayList<>();
        Set<String> sealed = seal.files().stream().map(SealedFile::name).collect(Collectors.toSet());
        for (SealedFile file : seal.files()) {
            change(file).ifPresent(changes::add);
        }
        for (SealedFile file : now.files()) {
            if (!sealed.contains(file.name())) {
                changes.add(added(file.name()));
            }
        }
        return new Verified(seal.code(), changes);
    }

    /** Names in a seal are only looked up among the files that are there: a forged seal opens no other file. */
    private Optional<FileChange> change(SealedFile sealed) throws IOException {
        SealedFile is = files.get(sealed.name());
        if (is == null) {
            return Optional.of(new FileChange(sealed.name(), FileChange.Kind.MISSING));
        }
        if (is.equals(sealed)) {
            return Optional.empty();
        }
        boolean grown = GROWING.contains(sealed.name()) && is.length() > sealed.length()
                && Sha256.of(folder.resolve(sealed.name()), sealed.length()).equals(sealed.sha256());
        return Optional.of(grown ? new FileChange(sealed.name(), FileChange.Kind.ROWS_ADDED, rows(sealed.name(), sealed.length()))
                : new FileChange(sealed.name(), FileChange.Kind.CHANGED));
    }

    private FileChange added(String name) throws IOException {
        return GROWING.contains(name) ? new FileChange(name, FileChange.Kind.ROWS_ADDED, rows(name, 0))
                : new FileChange(name, FileChange.Kind.ADDED);
    }

    /** Rows behind the first {@code from} bytes, without the header. */
    private int rows(String name, long from) throws IOException {
        int rows = from == 0 ? -1 : 0;
        try (InputStream in = Files.newInputStream(folder.resolve(name))) {
            in.skipNBytes(from);
            RowBytes found = new RowBytes(in);
            while (found.next()) {
                rows += found.end() > found.start() ? 1 : 0;
            }
        }
        return Math.max(0, rows);
    }
}
