package covewalk.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.page.PageStyle;
import covewalk.report.page.Pages;
import covewalk.report.punch.Sample;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder with something in it, in the PDF's place, stands for a PDF that another program holds open. */
class UnfinishedPdfTest {

    @TempDir
    Path folder;

    private void holdOpen(String pdf) throws IOException {
        Files.writeString(Files.createDirectory(folder.resolve(pdf)).resolve("page"), "held");
    }

    private static List<String> names(Report.Written written) {
        return written.files().stream().map(file -> file.getFileName().toString()).toList();
    }

    private static String why(Report.Written written) {
        return written.noPdf().orElseThrow().inFull(Locale.ROOT);
    }

    @Test
    void aPunchListIsWrittenThoughItsEarlierPdfIsHeldOpen() throws IOException {
        holdOpen("punch-list.pdf");
        Report.Written written = new Report(Words.english(), PageStyle.USUAL).write(Pages.audit(Sample.judgement(), ""), folder);
        assertEquals(List.of("punch-list.html", "punch-list.csv", "punch-list.json"), names(written));
        assertTrue(why(written).endsWith("An older one may still lie in its place, perhaps open in another program; close it there and "
                + "write the report again. The other files are complete."), why(written));
        assertFalse(Files.exists(folder.resolve(".punch-list.pdf.part")), "nothing half-written is left");
    }

    @Test
    void aSpecifiersPageIsWrittenThoughItsEarlierPdfIsHeldOpen() throws IOException {
        holdOpen("specifier.pdf");
        Report.Written written = new SideReport(Words.english(), PageStyle.USUAL).forSpecifier(Pages.audit(Sample.judgement(), ""), folder);
        assertEquals(List.of("specifier.html"), names(written));
        assertTrue(why(written).startsWith("There is no new PDF: "), why(written));
    }

    @Test
    void aHeldPdfThatCannotBeTakenAwayIsSaidToStay() throws IOException {
        holdOpen("some.pdf");
        try (UnfinishedPdf pdf = UnfinishedPdf.of(folder.resolve("some.pdf"), out -> {
            throw new IOException("no font");
        })) {
            assertTrue(why(pdf.finish(List.of())).contains("An older one may still lie in its place"));
        }
    }

    @Test
    void pagesTooDeepForTheLibraryLeaveTheOthers() throws IOException {
        try (UnfinishedPdf pdf = UnfinishedPdf.of(folder.resolve("some.pdf"), out -> {
            throw new StackOverflowError();
        })) {
            Report.Written written = pdf.finish(List.of(folder.resolve("some.html")));
            assertEquals(List.of("some.html"), names(written));
            assertTrue(why(written).startsWith("There is no PDF, since Covewalk stumbled"), why(written));
        }
    }
}
