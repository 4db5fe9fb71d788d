package covewalk.report;

import covewalk.survey.Problem;
import covewalk.words.Words;
import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Writes a report: the punch list as a page for the browser, as a PDF to print, as a table and as data. */
public final class Report {

    private static final String PDF = "punch-list.pdf";

    private final Words words;
    private final PageStyle style;

    public Report(Words words, PageStyle style) {
        this.words = words;
        this.style = style;
    }

    /**
     * What was written.
     *
     * @param files in the order in which they were made
     * @param noPdf why there is no PDF; empty where there is one, or where it was stopped
     */
    public record Written(List<Path> files, Optional<Problem> noPdf) {
        public Written {
            files = List.copyOf(files);
        }
    }

    private interface Part {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Writes the files of the report, and is not stopped. */
    public Written write(Audit audit, Path outDir) throws IOException {
        return write(audit, outDir, () -> false);
    }

    /**
     * Writes the files of the report. Each replaces an earlier one as a whole, once all that matter are made; where the
     * PDF cannot be made the others are written all the same, and an earlier PDF is taken away.
     *
     * @param outDir the folder to write to; made where it is missing
     * @param stopped asked before each file is made, and before they replace earlier ones; then none is written
     */
    public Written write(Audit audit, Path outDir, BooleanSupplier stopped) throws IOException {
        Files.createDirectories(outDir);
        Map<Path, Path> halves = new LinkedHashMap<>();
        try {
            for (Map.Entry<String, Part> part : parts(audit).entrySet()) {
                if (!stopped.getAsBoolean()) {
                    half(outDir, part.getKey(), part.getValue(), halves);
                }
            }
            Optional<Problem> noPdf = stopped.getAsBoolean() ? Optional.empty() : pdf(audit, outDir, halves);
            return stopped.getAsBoolean() ? new Written(List.of(), Optional.empty()) : new Written(moved(outDir, halves, noPdf), noPdf);
        } finally {
            for (Path half : halves.keySet()) {
                Files.deleteIfExists(half);
            }
        }
    }

    private static List<Path> moved(Path outDir, Map<Path, Path> halves, Optional<Problem> noPdf) throws IOException {
        List<Path> written = new ArrayList<>();
        for (Map.Entry<Path, Path> half : halves.entrySet()) {
            written.add(Files.move(half.getKey(), half.getValue(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING));
        }
        if (noPdf.isPresent()) {
            Files.deleteIfExists(outDir.resolve(PDF));
        }
        return written;
    }

    private Map<String, Part> parts(Audit audit) {
        PunchList list = audit.list();
        List<String> warnings = audit.warnings().stream().map(Report::inFull).toList();
        Map<String, Part> parts = new LinkedHashMap<>();
        parts.put("punch-list.html", out -> html(page(list, audit), out));
        parts.put("punch-list.csv", out -> out.write(bytes(new PunchCsv(words).of(list))));
        parts.put("punch-list.json", out -> out.write(bytes(new PunchJson(words).of(list, warnings, audit.sealCode()))));
        return parts;
    }

    /** The pages of a report, in words. */
    Page page(PunchList list, Audit audit) {
        return Page.of(list, audit, style, words);
    }

    private static String inFull(Problem warning) {
        return warning.inFull(Locale.ROOT);
    }

    private static void html(Page page, OutputStream out) throws IOException {
        try (Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8))) {
            new PunchHtml().write(page, writer);
        } catch (UncheckedIOException unwritten) {
            throw unwritten.getCause();
        }
    }

    /** Whatever the PDF's library stumbles over, a missing part of Java or too little memory, the other files are worth having. */
    private Optional<Problem> pdf(Audit audit, Path outDir, Map<Path, Path> halves) throws IOException {
        try {
            half(outDir, PDF, out -> new PunchPdf().write(page(audit.list(), audit), out), halves);
            return Optional.empty();
        } catch (IOException | RuntimeException | LinkageError | OutOfMemoryError noPdf) {
            Files.deleteIfExists(unfinished(outDir, PDF));
            halves.remove(unfinished(outDir, PDF));
            return Optional.of(NoPdf.because(noPdf));
        }
    }

    private static void half(Path outDir, String name, Part part, Map<Path, Path> halves) throws IOException {
        Path half = unfinished(outDir, name);
        halves.put(half, outDir.resolve(name));
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(half))) {
            part.writeTo(out);
        }
    }

    private static Path unfinished(Path outDir, String name) {
        return outDir.resolve("." + name + ".part");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
