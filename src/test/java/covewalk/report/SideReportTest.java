package covewalk.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.page.PageStyle;
import covewalk.report.page.Pages;
import covewalk.report.punch.Neighbour;
import covewalk.report.punch.Sample;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import covewalk.verdict.Judgement;
import covewalk.words.Words;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The sample's joints of C1 are beyond (R1 and R2) and unsettled (R2 and R3); that of C2 is within, its closing one not read. */
class SideReportTest {

    /** A transparent pixel (written by hand after ISO/IEC 15948). */
    private static final String PIXEL = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==";

    private final SideReport side = new SideReport(Words.english(), PageStyle.USUAL);

    @TempDir
    Path folder;

    private String specifier(Judgement judgement) throws IOException {
        return Files.readString(side.forSpecifier(Pages.audit(judgement, "7F3K-22QD"), folder).files().get(0));
    }

    private String warranty(Judgement judgement, String reel) throws IOException {
        Reel which = judgement.survey().reel(reel).orElseThrow();
        return Files.readString(side.forWarranty(Pages.audit(judgement, "7F3K-22QD"), which, folder, folder).files().get(0));
    }

    private static Document parsed(String html) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(html)));
        } catch (ParserConfigurationException | SAXException | IOException broken) {
            throw new AssertionError(html, broken);
        }
    }

    /** What a reader sees, the cells of a table with a space between them. */
    private static String text(String html) {
        return parsed(html.replaceAll("<(/?)(t[hdr]|p|h[1-3]|div)", " <$1$2")).getElementsByTagName("body").item(0).getTextContent()
                .replaceAll("\\s+", " ");
    }

    @Test
    void eachJointInDisputeIsOnASheetOfItsOwnAndNoOther() throws IOException {
        String page = specifier(Sample.judgement());
        assertEquals(2, parsed(page).getElementsByTagName("h2").getLength());
        assertTrue(text(page).contains("joint at 5.00 m") && text(page).contains("joint at 10.00 m"), text(page));
        assertFalse(text(page).contains("Bar, round the column"), text(page));
        assertEquals(1, page.split("class=\"own-sheet\"", -1).length - 1);
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(folder.resolve("specifier.pdf")))) {
            assertEquals(2, pdf.getNumberOfPages(), "a page each");
            assertTrue(new PDFTextStripper().getText(pdf).contains("seal 7F3K-22QD"));
        }
    }

    @Test
    void saysWhatBothLabelsAllowTogetherBesideLimitAndMeasurement() throws IOException {
        String text = text(specifier(Sample.judgement()));
        assertTrue(text.contains("The labels claim 3 and 3 steps about one centre. Both can be true with up to 6 steps between the two reels."
                + " Measured here: 3.40; the limit is 2."), text);
        assertTrue(text.contains("Verdict: beyond. The limit: 2 steps, set by specification 26 51 00, 2.3."), text);
        assertTrue(text.contains("To settle it: read 6 times more on each side."), text);
        assertTrue(text.contains("It does not say whose doing it is."), text);
    }

    @Test
    void aLimitThatNoClauseSetsIsTheInspectorsChoice() throws IOException {
        Judgement sample = Sample.judgement();
        Judgement unset = new Judgement(sample.survey().with(sample.survey().limits().withNeighbourSteps(2)), sample.coves(), sample.notes(), sample.claims());
        assertTrue(text(specifier(unset)).contains("The limit: 2 steps, chosen by the inspector, not a contract limit."));
    }

    @Test
    void withoutADisputeThePageSaysSo() throws IOException {
        Judgement sample = Sample.judgement();
        Judgement calm = new Judgement(sample.survey(), sample.coves().subList(1, 2), sample.notes(), sample.claims());
        assertTrue(text(specifier(calm)).contains("No joint is beyond the limit or unsettled"));
    }

    @Test
    void theDossierHoldsLabelPlaceReadingsNeighbourAndWhatIsMissing() throws IOException {
        String text = text(warranty(Sample.judgement(), "R2"));
        for (String part : List.of("Warranty dossier, reel R2", "lot 4502", "serial 0377", "invoice not noted", "5.00 to 10.00 m", "2026-09",
                "driver D1, circuit L3/12", "Reel R2 claims 3 steps of 2700 K", "the claim is: not shown", "R1 | R2 3.40 0.22 beyond",
                "To compare with: neighbour R3", "r5.25-0", "light on before 45 min", "No photo in the survey", "The invoice it came with.",
                "What is seen, and whether it came suddenly or gradually.", "A photo of the neighbour's label, likewise.",
                "Not held by a survey: the temperature at the strip and around it.")) {
            assertTrue(text.contains(part), part + " is not in: " + text);
        }
        assertFalse(text.contains("r0.25-0"), "readings of R1 are not those of R2 or its neighbour R3");
        assertFalse(text.contains("The lot of the reel."), "it is noted");
    }

    @Test
    void photosNamedByTheReelAreShownAndOthersAreNot() throws IOException {
        Files.createDirectories(folder.resolve("photos/labels"));
        for (String name : List.of("R2.png", "labels/r2-label.png", "R20.png", "R3 bag.png", "C1.png")) {
            Files.write(folder.resolve("photos").resolve(name), Base64.getDecoder().decode(PIXEL));
        }
        Files.writeString(folder.resolve("photos/R2-note.txt"), "no picture");
        Files.write(folder.resolve("photos/R2-large.png"), new byte[2 << 20]);
        String page = warranty(Sample.judgement(), "R2");
        assertEquals(3, parsed(page).getElementsByTagName("img").getLength());
        String text = text(page);
        assertTrue(text.contains("R2-large.png") && text.contains("labels/r2-label.png") && text.contains("R3 bag.png"), text);
        assertFalse(text.contains("R20.png") || text.contains("A photo of its label"), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "\" onload=\"alert(1)", "]]> --> </style></svg></td>", "\u202Eevil\u202C \u0000\u0007",
        "\uD83D\uDCA1 \uD83D lone", "${1+1} @raw"})
    void everyTextStaysText(String hostile) throws IOException {
        for (String page : List.of(specifier(Sample.named(hostile)), warranty(Sample.named(hostile), "R2"))) {
            Document document = parsed(page);
            assertEquals(0, document.getElementsByTagName("script").getLength());
            assertFalse(document.getDocumentElement().getTextContent().contains("\u202E"));
        }
        assertTrue(Files.exists(folder.resolve("specifier.pdf")) && Files.exists(folder.resolve("warranty-R2.pdf")));
    }

    @Test
    void needNothingElse() throws IOException {
        for (String page : List.of(specifier(Sample.judgement()), warranty(Sample.judgement(), "R2"))) {
            String own = page.replace("http://www.w3.org/2000/svg", "");
            for (String outside : List.of("http:", "https:", "@import", "url(", "<link", "<script", "javascript:", folder.toString())) {
                assertFalse(own.contains(outside), outside);
            }
        }
    }

    @Test
    void nobodyIsBlamed() throws IOException {
        String all = (text(specifier(Sample.judgement())) + text(warranty(Sample.judgement(), "R2"))).toLowerCase(Locale.ROOT);
        for (String word : List.of("defective", "guilty", "fault of", "negligent", "wrongly", "caused by", "consistent with")) {
            assertFalse(all.contains(word), word);
        }
    }

    @Test
    void theSameSurveyGivesTheSameBytes() throws IOException {
        specifier(Sample.judgement());
        byte[] html = Files.readAllBytes(folder.resolve("specifier.html"));
        byte[] pdf = Files.readAllBytes(folder.resolve("specifier.pdf"));
        specifier(Sample.judgement());
        assertArrayEquals(html, Files.readAllBytes(folder.resolve("specifier.html")));
        assertArrayEquals(pdf, Files.readAllBytes(folder.resolve("specifier.pdf")));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"R1, R1", "2631-W.7, 2631-W.7"})
    void aPlainIdIsTheFilesName(String id, String name) {
        assertEquals(name, SideReport.fileName(id));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/passwd", "a/b", "a\\b", "C:x", "R 1", "", "\u0000", "漢字", "=1+1"})
    void anIdThatIsNoFilesNameBecomesOne(String id) {
        assertTrue(SideReport.fileName(id).matches("[A-Za-z0-9._-]+"), SideReport.fileName(id));
        assertNotEquals(SideReport.fileName(id), SideReport.fileName(id + "x"));
        assertTrue(SideReport.fileName("x".repeat(500)).length() < 100);
    }

    @Test
    void theNeighbourWithFewestJointsBeyondIsTheOneToCompareWith() {
        Survey survey = Sample.judgement().survey();
        assertEquals(Optional.of("R3"), Neighbour.toCompare(Sample.judgement(), survey.reel("R2").orElseThrow()).map(Reel::id));
        Judgement alone = new Judgement(survey, Sample.judgement().coves().subList(2, 3), List.of(), List.of());
        assertEquals(Optional.empty(), Neighbour.toCompare(alone, survey.reel("R1").orElseThrow()), "in C3 it hangs alone");
    }
}
