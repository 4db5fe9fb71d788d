package covewalk.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.page.ItemPage;
import covewalk.report.page.Page;
import covewalk.report.page.PageStyle;
import covewalk.report.page.Pages;
import covewalk.report.page.Paper;
import covewalk.report.page.StopPage;
import covewalk.report.punch.PunchList;
import covewalk.report.punch.Sample;
import covewalk.verdict.Judgement;
import covewalk.words.LengthUnit;
import covewalk.words.Words;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The PDF, read back with PDFBox: it lays the page out no more than a reader does. */
class PunchPdfTest {

    private static final float POINTS_PER_MM = 72 / 25.4f;

    @Test
    void saysOfEveryItemWhatThePageSays() throws IOException {
        String text = text(pdf(Sample.judgement(), "7F3K-22QD", PageStyle.USUAL));
        Page page = Pages.of(Sample.judgement(), "7F3K-22QD");
        for (StopPage stop : page.stops()) {
            assertTrue(text.contains(stop.title()), stop.title());
            for (ItemPage item : stop.items()) {
                assertTrue(text.contains(item.place()), item.place());
                item.measured().forEach(fact -> assertTrue(text.contains(fact.label() + " " + fact.text()), fact.text()));
                item.todo().forEach(fact -> assertTrue(text.contains(fact.text()), fact.text()));
                item.labels().forEach(row -> assertTrue(text.contains(row.before()), row.field()));
            }
        }
    }

    @Test
    void headsEveryPageWithSiteDateSealAndNumber() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Sample.judgement(), "7F3K-22QD", PageStyle.USUAL))) {
            PDFTextStripper stripper = new PDFTextStripper();
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                String text = stripper.getText(document);
                assertTrue(text.contains("Punch list: Quay House, 2026-10-05"), text);
                assertTrue(text.contains("seal 7F3K-22QD · page " + page + " of " + pages), text);
            }
        }
    }

    @Test
    void writesTheTextOfItsPicturesAsText() throws IOException {
        String text = text(pdf(Sample.judgement(), "", PageStyle.USUAL));
        assertTrue(text.contains("0 = west end, by the door"), "the strip's datum");
        assertTrue(text.contains("rings: 1, …, 3 steps from the target"), "the diagram's legend");
        assertTrue(text.contains("not sealed"), "and that there is no seal");
    }

    @Test
    void isTaggedWithTitleLanguageAndBookmarks() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Sample.judgement(), "", PageStyle.USUAL))) {
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertNotNull(document.getDocumentCatalog().getStructureTreeRoot().getK());
            assertEquals("en", document.getDocumentCatalog().getLanguage());
            assertEquals("Punch list: Quay House", document.getDocumentInformation().getTitle());
            assertTrue(document.getDocumentCatalog().getViewerPreferences().displayDocTitle());
            List<String> sections = new ArrayList<>();
            List<String> stops = new ArrayList<>();
            for (PDOutlineItem section : document.getDocumentCatalog().getDocumentOutline().children()) {
                sections.add(section.getTitle());
                section.children().forEach(child -> stops.add(child.getTitle().replaceFirst("[:,].*", "")));
            }
            assertEquals(List.of("Stop 1", "Stop 2", "Stop 3", "Stop 4", "Cove C1", "Cove C2", "Cove C3"), stops);
            assertEquals(List.of("Quay House", "Before you go up", "Items, in walking order", "Evidence by cove",
                    "What bears on the evidence", "How it was judged", "Readings as typed", "Seal and signatures"), sections);
        }
    }

    @Test
    void carriesItsFontsAlongAndNamesNoOther() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Sample.judgement(), "", PageStyle.USUAL))) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded() && font.getName().contains("Lato"), font.getName());
                }
            }
        }
    }

    @Test
    void holdsNoClockTimeAndTheSameBytesEachTime() throws IOException {
        byte[] once = pdf(Sample.judgement(), "7F3K-22QD", PageStyle.USUAL);
        assertArrayEquals(once, pdf(Sample.judgement(), "7F3K-22QD", PageStyle.USUAL));
        try (PDDocument document = Loader.loadPDF(once)) {
            assertNull(document.getDocumentInformation().getCreationDate());
            assertNull(document.getDocumentInformation().getModificationDate());
            String xmp = new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertFalse(xmp.contains("Date"), xmp);
        }
    }

    /** A4 is 210 by 297 mm (ISO 216), letter 8.5 by 11 inches. */
    @Test
    void fitsThePaperAskedFor() throws IOException {
        assertPaper(210, 297, new PageStyle(Paper.A4, LengthUnit.M));
        assertPaper(215.9, 279.4, new PageStyle(Paper.LETTER, LengthUnit.M));
    }

    private static void assertPaper(double widthMm, double heightMm, PageStyle style) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Sample.judgement(), "", style))) {
            for (PDPage page : document.getPages()) {
                assertEquals(widthMm, page.getMediaBox().getWidth() / POINTS_PER_MM, 0.1);
                assertEquals(heightMm, page.getMediaBox().getHeight() / POINTS_PER_MM, 0.1);
            }
        }
    }

    @Test
    void leadsWithTheUnitAskedFor() throws IOException {
        assertTrue(text(pdf(Sample.judgement(), "", PageStyle.USUAL)).contains("Joint at 5.00 m (16 ft 4 3/4 in)"));
        assertTrue(text(pdf(Sample.judgement(), "", new PageStyle(Paper.LETTER, LengthUnit.FT))).contains("Joint at 16 ft 4 3/4 in (5.00 m)"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "\" onload=\"alert(1)", "]]> --> </style></svg></td>", "\\ ) ( << /JS (app.alert) >>",
            "\u202Eevil\u202C \u0000\u0007\u001B[2J", "\u0627\u0644\u0633\u0644\u0627\u0645 \u05E9\u05DC\u05D5\u05DD", "\uD83D\uDCA1 \uD83D lone",
            "\u6F22\u5B57", "a\u0301\u0327\u0338", "\uFFFE\uFFFF", "file:///etc/passwd http://x", "{0} ${1+1} \\0 \\1 "})
    void everyTextStaysText(String hostile) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Sample.named(hostile), "", PageStyle.USUAL))) {
            assertNull(document.getDocumentCatalog().getOpenAction());
            assertNull(document.getDocumentCatalog().getNames() == null ? null : document.getDocumentCatalog().getNames().getJavaScript());
            assertTrue(new PDFTextStripper().getText(document).contains("Joint at 5.00 m (16 ft 4 3/4 in)"));
            writesNothingOfTheirs(document);
        }
    }

    /** Blocks of Unicode, each by a few of its letters. */
    @ParameterizedTest
    @CsvSource(textBlock = """
        Łódź Ősi Čapek ḃẏ,   Latin Extended-A and Additional
        Ελλάς ᾧ,             Greek and Greek Extended
        Київ ҰЯ,             Cyrillic
        Երևան,               Armenian
        ← ↑ → ⇒ ↺,           arrows
        ∑ √ ∞ ≈ ≤ ∫ ∅,       mathematics
        ☀ ✓ ■ ◆,             symbols
        """)
    void printsTheLettersOf(String letters, String block) throws IOException {
        String text = text(pdf(Sample.named(letters), "", PageStyle.USUAL));
        assertTrue(text.contains(letters), block);
        assertTrue(text.contains("Punch list: " + letters), "in the running head too: " + block);
        assertFalse(text.contains("Letters that this PDF cannot print"), block);
    }

    @ParameterizedTest
    @CsvSource({"漢字, ##, 'U+6F22, U+5B57'", "שלום, ####, 'U+05E9, U+05DC, U+05D5, U+05DD'", "a\uD83E\uDDF5b, a#b, U+1F9F5"})
    void saysWhichLettersItCannotPrint(String letters, String printed, String named) throws IOException {
        String text = text(pdf(Sample.named(letters), "", PageStyle.USUAL));
        assertTrue(text.contains("Letters that this PDF cannot print stand as #: " + named + "."), text.substring(0, 400));
        assertTrue(text.contains("Punch list: " + printed), text.substring(0, 400));
        assertFalse(text.contains(letters));
    }

    /** PDF/UA-1 (ISO 14289-1), 7.18.5. */
    @Test
    void saysOfEveryLinkWhereItLeads() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(Sample.judgement(), "", PageStyle.USUAL))) {
            assertEquals(Pages.of(Sample.judgement(), "").front().worst().stream().map(worst -> worst.label()).toList(),
                    document.getPage(0).getAnnotations().stream().map(link -> link.getContents()).toList());
        }
    }

    private static void writesNothingOfTheirs(PDDocument document) throws IOException {
        for (PDPage page : document.getPages()) {
            assertEquals(List.of(), page.getAnnotations().stream().map(annotation -> annotation.getCOSObject().getDictionaryObject(COSName.A))
                    .filter(action -> action != null && action.toString().contains("URI")).toList());
        }
    }

    @Test
    void breaksAVeryLongTextIntoLines() throws IOException {
        Path pages = Files.createDirectories(Path.of("target", "pages"));
        try (PDDocument document = Loader.loadPDF(pdf(Sample.named("x".repeat(10_000)), "", PageStyle.USUAL))) {
            assertTrue(document.getNumberOfPages() < 40, document.getNumberOfPages() + " pages");
            BufferedImage front = new PDFRenderer(document).renderImageWithDPI(0, 60);
            ImageIO.write(front, "png", pages.resolve("very-long.png").toFile());
            assertTrue(isWhite(front, front.getWidth() - 12), "text runs out of the page");
        }
    }

    /** Every page as a picture under target/pages, to be looked at; none may be empty or run out of its margins. */
    @Test
    void printsWithinItsMargins() throws IOException {
        Path pages = Files.createDirectories(Path.of("target", "pages"));
        try (PDDocument document = Loader.loadPDF(pdf(Sample.judgement(), "7F3K-22QD", PageStyle.USUAL))) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImageWithDPI(page, 70);
                ImageIO.write(image, "png", pages.resolve("sample-" + (page + 1) + ".png").toFile());
                assertTrue(isWhite(image, 12) && isWhite(image, image.getWidth() - 12), "page " + (page + 1) + " runs out of its margins");
            }
        }
    }

    private static boolean isWhite(BufferedImage image, int x) {
        for (int y = 0; y < image.getHeight(); y++) {
            if ((image.getRGB(x, y) & 0xFFFFFF) != 0xFFFFFF) {
                return false;
            }
        }
        return true;
    }

    private static byte[] pdf(Judgement judgement, String seal, PageStyle style) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PunchPdf().write(Page.of(PunchList.of(judgement), Pages.audit(judgement, seal), style, Words.english()), out);
        return out.toByteArray();
    }

    /** All of it on one line, as lines break where the paper ends. */
    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
