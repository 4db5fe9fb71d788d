package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How the demonstration falls onto paper, in both languages, on both papers; what is on which page is read from the PDF's tags. */
class PaperTest {

    @TempDir
    Path folder;

    private Path survey;

    @BeforeEach
    void aCopyOfTheDemonstration() throws IOException {
        survey = Files.createDirectories(folder.resolve("survey"));
        for (String file : List.of("survey.json", "readings.csv", "punch.csv")) {
            Files.copy(Path.of("survey-demo", "reading-rooms", file), survey.resolve(file));
        }
    }

    @ParameterizedTest
    @CsvSource({"en, a4", "en, letter", "de, a4", "de, letter"})
    void eachJointInDisputeHasOneSheet(String language, String paper) throws IOException {
        print(language, paper);
        int joints = Files.readString(folder.resolve("specifier.html")).split("<h2 ", -1).length - 1;
        try (PDDocument document = Loader.loadPDF(folder.resolve("specifier.pdf").toFile())) {
            assertTrue(joints > 3, joints + " joints");
            assertEquals(joints, document.getNumberOfPages());
        }
    }

    /** With fewer readings, other tables come to the end of a page. */
    @ParameterizedTest
    @CsvSource({"en, a4, 0", "en, letter, 0", "de, a4, 0", "de, letter, 0", "en, a4, 79", "de, letter, 70"})
    void noTableLeavesItsHeadAloneAtTheEndOfAPage(String language, String paper, int fewer) throws IOException {
        List<String> log = Files.readAllLines(survey.resolve("readings.csv"));
        Files.write(survey.resolve("readings.csv"), log.subList(0, log.size() - fewer));
        print(language, paper);
        for (String file : List.of("punch-list.pdf", "specifier.pdf")) {
            try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
                List<COSDictionary> tables = new ArrayList<>();
                find(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), "Table", tables);
                assertTrue(tables.size() > 5, tables.size() + " tables in " + file);
                tables.forEach(table -> assertTrue(headAndFirstRowOnOnePage(table), file + ": a head alone"));
            }
        }
    }

    /** Its table of places was laid out a letter a line, and the neighbour's label fell onto two pages. */
    @ParameterizedTest
    @CsvSource({"en, a4", "en, letter", "de, a4", "de, letter"})
    void aDossierTearsNoWordOfItsTableAndNoLabel(String language, String paper) throws IOException {
        print(language, paper, "warranty", "--reel", "R11");
        try (PDDocument document = Loader.loadPDF(folder.resolve("warranty-R11.pdf").toFile())) {
            String text = new PDFTextStripper().getText(document);
            for (String whole : List.of("2026-09", language.equals("en") ? "5.00 to 10.00 m" : "5,00 bis 10,00 m",
                    language.equals("en") ? "known from installed" : "bekannt aus eingebaut")) {
                assertTrue(text.contains(whole), whole + " is not in: " + text);
            }
            List<COSDictionary> tables = new ArrayList<>();
            find(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), "Table", tables);
            List<COSDictionary> labels = tables.stream().filter(table -> rows(table).size() == 10 && kids(rows(table).get(0)).size() == 2)
                    .toList();
            assertEquals(1, labels.size(), "the neighbour's label has ten lines, each a name and a text");
            assertEquals(1, rows(labels.get(0)).stream().map(PaperTest::pageOf).distinct().count(), "its label is on one page");
        }
    }

    @ParameterizedTest
    @CsvSource({"en, letter, readings", "de, letter, Messwerte", "de, a4, Messwerte"})
    void inFeetTheTableOfStationsTearsNoHeadAndNoLength(String language, String paper, String head) throws IOException {
        FrontDoor.run("report", survey.toString(), "--out", folder.toString(), "--language", language, "--paper", paper, "--units", "ft");
        try (PDDocument document = Loader.loadPDF(folder.resolve("punch-list.pdf").toFile())) {
            List<String> lines = new PDFTextStripper().getText(document).replace('\u00a0', ' ').lines().map(String::strip).toList();
            assertTrue(lines.stream().anyMatch(line -> line.contains(head + " u'")), "the head of the stations");
            long rows = lines.stream().filter(line -> line.matches("\\d+ ft \\d+( \\d/\\d)? in \\d+ 0[.,]\\d{4} .*")).count();
            assertTrue(rows > 40, rows + " stations begin with a whole length, of more than forty rows");
        }
    }

    private static List<COSDictionary> rows(COSDictionary table) {
        List<COSDictionary> rows = new ArrayList<>();
        find(table, "TR", rows);
        return rows;
    }

    private void print(String language, String paper) {
        print(language, paper, "specifier");
    }

    private void print(String language, String paper, String... reader) {
        List<String> words = new ArrayList<>(List.of("report", survey.toString(), "--out", folder.toString(), "--language", language,
                "--paper", paper, "--for"));
        words.addAll(List.of(reader));
        FrontDoor.Run run = FrontDoor.run(words.toArray(String[]::new));
        assertEquals(1, run.code(), run.err());
    }

    private static boolean headAndFirstRowOnOnePage(COSDictionary table) {
        List<COSDictionary> heads = new ArrayList<>();
        List<COSDictionary> bodies = new ArrayList<>();
        find(table, "THead", heads);
        find(table, "TBody", bodies);
        COSBase ofHead = heads.isEmpty() ? null : pageOf(heads.get(0));
        return ofHead == null || ofHead == pageOf(bodies.get(0)); // a table that only places things has an empty head
    }

    /** The page of the first content below a tag. */
    private static COSBase pageOf(COSDictionary tag) {
        if (tag.getDictionaryObject(COSName.PG) != null) {
            return tag.getDictionaryObject(COSName.PG);
        }
        return kids(tag).stream().map(PaperTest::pageOf).filter(page -> page != null).findFirst().orElse(null);
    }

    private static void find(COSDictionary tag, String type, List<COSDictionary> found) {
        if (type.equals(tag.getNameAsString(COSName.S))) {
            found.add(tag);
        }
        kids(tag).forEach(kid -> find(kid, type, found));
    }

    private static List<COSDictionary> kids(COSDictionary tag) {
        COSBase kids = tag.getDictionaryObject(COSName.K);
        if (kids instanceof COSDictionary one) {
            return List.of(one);
        }
        List<COSDictionary> found = new ArrayList<>();
        if (kids instanceof COSArray many) {
            for (int i = 0; i < many.size(); i++) {
                if (many.getObject(i) instanceof COSDictionary kid) {
                    found.add(kid);
                }
            }
        }
        return found;
    }
}
