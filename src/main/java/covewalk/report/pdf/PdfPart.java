package covewalk.report.pdf;

import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PagePosition;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.Box;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A run of pages laid out from HTML.
 *
 * @param document open; whoever asked for it closes it
 * @param headings of sections, stops and coves, in order
 */
record PdfPart(PDDocument document, List<PdfHeading> headings) {

    private static final Pattern HEADINGS = Pattern.compile("(part|stop|cove)-.+");

    /** @param tagged whether to write what reading aids go by (PDF/UA); it takes much memory on long documents */
    static PdfPart of(String html, PdfFonts fonts, boolean tagged) throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(document(html), "");
        builder.useUnicodeLineBreaker(new LineBreaks());
        builder.useSVGDrawer(new PdfPictures());
        builder.useExternalResourceAccessControl((uri, type) -> uri != null && uri.startsWith("data:"), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.usePdfUaAccessibility(tagged);
        builder.withDiagnosticConsumer(diagnostic -> { }); // nothing in them that a user could act on
        fonts.addTo(builder, html);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            PDDocument document = renderer.createPDFKeepOpen();
            if (tagged) {
                PdfLinks.describe(document);
            }
            return new PdfPart(document, headings(renderer));
        }
    }

    private static List<PdfHeading> headings(PdfBoxRenderer renderer) {
        List<PdfHeading> headings = new ArrayList<>();
        for (PagePosition<Box> position : renderer.findPagePositionsByID(HEADINGS)) {
            Element element = position.getElement().getElement();
            headings.add(new PdfHeading(element.getTagName().equals("h2"), element.getTextContent().strip().replaceAll("\\s+", " "),
                    position.getPageNo(), position.getY() + position.getHeight()));
        }
        headings.sort(Comparator.comparingInt(PdfHeading::page).thenComparing(Comparator.comparingDouble(PdfHeading::y).reversed()));
        return headings;
    }

    private static Document document(String html) throws IOException {
        try {
            DocumentBuilderFactory parsers = DocumentBuilderFactory.newDefaultInstance();
            parsers.setFeature("http://apache.org/xml/features/dom/defer-node-expansion", false); // every element is looked at anyhow
            Document document = parsers.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
            saying(document.getDocumentElement());
            return document;
        } catch (ParserConfigurationException | SAXException broken) {
            throw new IOException("the page is not well-formed", broken);
        }
    }

    /** A PDF takes what a picture says from {@code alt}, which HTML does not know there: its pictures begin with a title. */
    private static void saying(Element element) {
        if (element.getTagName().equals("svg")) {
            Node first = element.getFirstChild();
            element.setAttribute("alt", first.getNodeName().equals("title") ? first.getTextContent() : "!");
            return;
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                saying(inner);
            }
        }
    }
}
