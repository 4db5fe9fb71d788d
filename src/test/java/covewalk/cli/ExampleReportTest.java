package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The example under docs/report is what this version writes of the demonstration. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExampleReportTest {

    private static final Path KEPT = Path.of("docs", "report");
    private static final String RENEW = "The example is stale. Read what changed, then write it again:"
            + " java -jar target/covewalk.jar report survey-demo/reading-rooms --out docs/report";

    @TempDir
    static Path made;

    /** Of a copy: a report may add to a survey's folder. */
    @BeforeAll
    void report() throws IOException {
        Path demo = Path.of("survey-demo", "reading-rooms");
        Path copy = Files.createDirectories(made.resolve("survey"));
        for (String file : List.of("survey.json", "readings.csv", "punch.csv", "seal.json")) {
            Files.copy(demo.resolve(file), copy.resolve(file));
        }
        FrontDoor.run("report", copy.toString(), "--out", made.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"punch-list.html", "punch-list.csv", "punch-list.json"})
    void isWhatIsWrittenNow(String file) throws IOException {
        assertEquals(Files.readString(KEPT.resolve(file)), Files.readString(made.resolve(file)), RENEW);
    }

    /** By text, since the bytes depend on how a Java packs them. */
    @Test
    void soIsThePdf() throws IOException {
        assertEquals(text(KEPT.resolve("punch-list.pdf")), text(made.resolve("punch-list.pdf")), RENEW);
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
