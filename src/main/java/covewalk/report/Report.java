package covewalk.report;

import covewalk.report.data.PunchCsv;
import covewalk.report.data.PunchJson;
import covewalk.report.page.Page;
import covewalk.report.page.PageStyle;
import covewalk.report.page.PunchHtml;
import covewalk.report.pdf.PunchPdf;
import covewalk.report.punch.Audit;
import covewalk.report.punch.PunchList;
import covewalk.survey.Problem;
import covewalk.words.Words;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
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

    /** Writes the files of the report, and is not stopped. */
    public Written write(Audit audit, Path outDir) throws IOException {
        return write(audit, outDir, () -> false);
    }

    /**
     * Writes the files of the report. Each replaces an earlier one as a whole, once all that matter are made; where the
     * PDF cannot be made the others are written all the same, and an earlier PDF is taken away as far as the system lets us.
     *
     * @param outDir the folder to write to; made where it is missing
     * @param stopped asked before each file is made, and before they replace earlier ones; then none is written
     */
    public Written write(Audit audit, Path outDir, BooleanSupplier stopped) throws IOException {
        Files.createDirectories(outDir);
        Page page = page(audit.list(), audit);
        try (UnfinishedFiles others = new UnfinishedFiles(outDir)) {
            ForkJoinTask<?> beside = ForkJoinPool.commonPool().submit(() -> others(audit, page, others, stopped));
            return stopped.getAsBoolean() ? nothing(beside) : withPdf(page, outDir.resolve(PDF), beside, others, stopped);
        } catch (UncheckedIOException unwritten) {
            throw unwritten.getCause();
        }
    }

    /** The PDF is made on this thread, which takes its share of a long one. */
    private static Written withPdf(Page page, Path place, ForkJoinTask<?> beside, UnfinishedFiles others, BooleanSupplier stopped)
            throws IOException {
        try (UnfinishedPdf pdf = UnfinishedPdf.of(place, out -> new PunchPdf().write(page, out))) {
            beside.join();
            return stopped.getAsBoolean() ? nothing(beside) : pdf.finish(others.finish());
        }
    }

    /** Not before the others have left their files alone, which are taken away then. */
    private static Written nothing(ForkJoinTask<?> beside) {
        beside.join();
        return new Written(List.of(), Optional.empty());
    }

    private void others(Audit audit, Page page, UnfinishedFiles files, BooleanSupplier stopped) {
        PunchList list = audit.list();
        List<String> warnings = audit.warnings().stream().map(Report::inFull).toList();
        try {
            unlessStopped(stopped, files, "punch-list.html", out -> html(page, out));
            unlessStopped(stopped, files, "punch-list.csv", out -> out.write(bytes(new PunchCsv(words).of(list))));
            unlessStopped(stopped, files, "punch-list.json",
                    out -> out.write(bytes(new PunchJson(words).of(list, warnings, audit.sealCode()))));
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
    }

    private static void unlessStopped(BooleanSupplier stopped, UnfinishedFiles files, String name, UnfinishedFile.Content content)
            throws IOException {
        if (!stopped.getAsBoolean()) {
            files.add(name, content);
        }
    }

    /** The pages of a report, in words. */
    Page page(PunchList list, Audit audit) {
        return Page.of(list, audit, style, words);
    }

    private static String inFull(Problem warning) {
        return warning.inFull(Locale.ROOT);
    }

    private static void html(Page page, OutputStream out) {
        new PunchHtml().write(page, new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8)));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
