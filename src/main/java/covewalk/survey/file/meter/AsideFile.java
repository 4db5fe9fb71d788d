package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.log.SetAside;
import covewalk.survey.file.log.SetAsideRow;
import covewalk.survey.file.disk.SpreadsheetCell;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The rows set aside in a survey, each of them once however often its file is imported. */
final class AsideFile {

    private final FolderLock lock;

    private AsideFile(FolderLock lock) {
        this.lock = lock;
    }

    static AsideFile in(FolderLock lock) {
        return new AsideFile(lock);
    }

    /** @param original the name of the rows' file in {@code originals/} */
    void add(String original, List<RowOutcome> rows) throws IOException {
        Set<String> there = there();
        List<SetAsideRow> fresh = new ArrayList<>();
        for (RowOutcome outcome : rows) {
            if (outcome.refusal().isPresent() && !there.contains(key(SpreadsheetCell.harmless(original), String.valueOf(outcome.row().line())))) {
                Problem why = outcome.refusal().get();
                fresh.add(new SetAsideRow(original, outcome.row().line(), why.column(), why.sentence(Locale.ROOT), outcome.row().raw()));
            }
        }
        SetAside.of(lock).add(fresh);
    }

    private Set<String> there() throws IOException {
        Set<String> keys = new HashSet<>();
        Path file = lock.folder().resolve(FileNames.SET_ASIDE);
        if (Files.isRegularFile(file)) {
            String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            new RowSplitter(text, ',').all().forEach(row -> keys.add(key(row.cell(0), row.cell(1))));
        }
        return keys;
    }

    private static String key(String source, String line) {
        return source + ':' + line;
    }
}
