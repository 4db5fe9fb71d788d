package covewalk.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.punch.Sample;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The page is written so that XML parsers read it too: with Java's own one its escaping is checked from outside. */
class PunchHtmlTest {

    private final String page = html(Sample.judgement(), "7F3K-22QD");

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "\" onload=\"alert(1)", "' & \" < >", "]]> --> </style></svg></td>",
            "\u202Eevil\u202C \u0000\u0007\u001B[2J", "=HYPERLINK(\"http://x\")", "\uD83D\uDCA1 \uD83D lone", "${1+1} @raw $unsafe{x}", "\uFFFE"})
    void everyTextStaysText(String hostile) {
        Document document = parsed(html(Sample.named(hostile), hostile));
        assertEquals(0, document.getElementsByTagName("script").getLength());
        assertEquals(parsed(page).getElementsByTagName("*").getLength(), document.getElementsByTagName("*").getLength(), 6);
        assertFalse(document.getDocumentElement().getTextContent().contains("\u202E"));
    }

    @Test
    void showsTextsAsTheyWereTyped() {
        String title = parsed(html(Sample.named("a < b & \"c\" 漢字 \uD83D\uDCA1"), "")).getElementsByTagName("h1").item(0).getTextContent();
        assertEquals("a < b & \"c\" 漢字 \uD83D\uDCA1", title);
    }

    @Test
    void staysAPageWithVeryLongTexts() {
        assertTrue(html(Sample.named("x".repeat(10_000)), "").length() < 2.5 * page.length());
    }

    @Test
    void needsNothingElse() {
        String own = page.replace("http://www.w3.org/2000/svg", "");
        for (String outside : List.of("http:", "https:", "src=", "@import", "url(", "<link", "<script", "javascript:")) {
            assertFalse(own.contains(outside), outside);
        }
    }

    @Test
    void saysItsLanguageAndItsKindOfDocument() {
        assertTrue(page.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"), page.substring(0, 60));
        assertTrue(html(Sample.judgement(), "").contains("<meta charset=\"utf-8\"/>"));
    }

    @Test
    void hasAPlaceForEveryItem() {
        Document document = parsed(page);
        for (int item = 1; item <= 4; item++) {
            int number = item;
            assertTrue(elements(document, "div").stream().anyMatch(div -> div.equals("item-" + number)), "item " + item);
        }
        assertFalse(page.contains("item-5"));
    }

    @Test
    void printsTheSealOnlyWhereThereIsOne() {
        assertTrue(page.contains("Seal code 7F3K-22QD, over the files below."));
        assertFalse(html(Sample.judgement(), "").contains("Seal code"));
    }

    @Test
    void isTheSameEachTimeAndOnEveryMachine() {
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertEquals(page, html(Sample.judgement(), "7F3K-22QD"));
        } finally {
            Locale.setDefault(usual);
        }
    }

    private static String html(Judgement judgement, String seal) {
        StringWriter out = new StringWriter();
        new PunchHtml().write(Pages.of(judgement, seal), out);
        return out.toString();
    }

    private static List<String> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        return IntStream.range(0, nodes.getLength())
                .mapToObj(i -> ((Element) nodes.item(i)).getAttribute("id")).toList();
    }

    private static Document parsed(String html) {
        try {
            DocumentBuilder parser = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            parser.setErrorHandler(null);
            Document document = parser.parse(new InputSource(new StringReader(html)));
            assertNotNull(document.getDocumentElement());
            return document;
        } catch (ParserConfigurationException | SAXException | IOException broken) {
            throw new AssertionError("the page does not parse", broken);
        }
    }
}
