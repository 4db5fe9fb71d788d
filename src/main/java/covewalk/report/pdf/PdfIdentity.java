package covewalk.report.pdf;

import covewalk.report.page.Page;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Who a PDF says it is: title and language, and nothing of clock or machine, so that the same survey gives the same
 * bytes.
 */
final class PdfIdentity {

    private static final String MAKER = "Covewalk";

    private PdfIdentity() {
    }

    /** @param tagged whether it keeps to PDF/UA and says so */
    static void write(PDDocument document, Page page, boolean tagged) throws IOException {
        write(document, page.text("page.name") + ": " + page.title(), page.language(), page.head().seal(), tagged);
    }

    /** @param seal tells one state of a survey from another */
    static void write(PDDocument document, String title, String language, String seal, boolean tagged) throws IOException {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        information.setProducer(MAKER);
        document.setDocumentInformation(information);
        document.setDocumentId(number(title + seal));
        document.getDocumentCatalog().setLanguage(language);
        PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
        PDViewerPreferences shown = preferences == null ? new PDViewerPreferences(new COSDictionary()) : preferences;
        shown.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(shown);
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(xmp(title, language, tagged).getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(metadata);
    }

    private static long number(String text) {
        return UUID.nameUUIDFromBytes(text.getBytes(StandardCharsets.UTF_8)).getMostSignificantBits();
    }

    /** XMP (ISO 16684-1) with title, language and, where it holds, PDF/UA-1 (ISO 14289-1). */
    private static String xmp(String title, String language, boolean tagged) {
        return "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">"
                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description rdf:about=\"\""
                + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\""
                + " xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">"
                + "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">" + escaped(title) + "</rdf:li></rdf:Alt></dc:title>"
                + "<dc:language><rdf:Bag><rdf:li>" + escaped(language) + "</rdf:li></rdf:Bag></dc:language>"
                + "<pdf:Producer>" + MAKER + "</pdf:Producer>" + (tagged ? "<pdfuaid:part>1</pdfuaid:part>" : "")
                + "</rdf:Description></rdf:RDF></x:xmpmeta>\n<?xpacket end=\"w\"?>";
    }

    private static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().filter(c -> c >= ' ' && !(c >= 0xD800 && c <= 0xDFFF) && (c & 0xFFFE) != 0xFFFE)
                .forEach(c -> safe.append(c == '<' ? "&lt;" : c == '>' ? "&gt;" : c == '&' ? "&amp;" : Character.toString(c)));
        return safe.toString();
    }
}
