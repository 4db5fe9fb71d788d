package covewalk.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.data.Golden;
import covewalk.report.data.PunchJson;
import covewalk.report.page.PageStyle;
import covewalk.report.page.Pages;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.Sample;
import covewalk.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportTest {

    private final Report report = new Report(Words.english(), PageStyle.USUAL);

    @TempDir
    Path folder;

    @Test
    void writesItsFilesAndNothingElse() throws IOException {
        List<Path> written = report.write(Pages.audit(Sample.judgement(), ""), folder.resolve("new/out")).files();
        assertEquals(List.of("punch-list.html", "punch-list.csv", "punch-list.json", "punch-list.pdf"),
                written.stream().map(file -> file.getFileName().toString()).toList());
        try (Stream<Path> files = Files.list(folder.resolve("new/out"))) {
            assertEquals(4, files.count(), "no half-written file is left");
        }
    }

    @Test
    void replacesAnEarlierReport() throws IOException {
        Files.writeString(folder.resolve("punch-list.csv"), "an earlier report");
        report.write(Pages.audit(Sample.judgement(), ""), folder);
        assertFalse(Files.readString(folder.resolve("punch-list.csv")).contains("an earlier report"));
    }

    /** A folder where the PDF is first written stands for whatever may keep it from being made. */
    @Test
    void withoutAPdfTheOthersAreWrittenAndAnEarlierPdfIsTakenAway() throws IOException {
        Files.writeString(folder.resolve("punch-list.pdf"), "an earlier report");
        Files.createDirectory(folder.resolve(".punch-list.pdf.part"));
        Report.Written written = report.write(Pages.audit(Sample.judgement(), ""), folder);
        assertEquals(3, written.files().size());
        assertTrue(written.noPdf().isPresent());
        assertFalse(Files.exists(folder.resolve("punch-list.pdf")), "an earlier report beside a new one misleads");
    }

    @Test
    void theSameSurveyGivesTheSameBytesWhereverItGoes() throws IOException {
        List<Path> here = report.write(Pages.audit(Sample.judgement(), "7F3K"), folder.resolve("here")).files();
        List<Path> there = report.write(Pages.audit(Sample.judgement(), "7F3K"), folder.resolve("there")).files();
        for (int i = 0; i < here.size(); i++) {
            assertArrayEquals(Files.readAllBytes(here.get(i)), Files.readAllBytes(there.get(i)));
            assertFalse(Files.readString(here.get(i), StandardCharsets.ISO_8859_1).contains(folder.toString()));
        }
    }

    @Test
    void theItemsAsJsonAreAsKept() {
        Golden.assertSame("punch-list.json", new PunchJson(Words.english())
                .of(PunchList.of(Sample.judgement()), List.of("Cove C2 has no height."), "7F3K-22QD"));
    }
}
