package covewalk.report.pdf;

import covewalk.report.page.Page;
import covewalk.report.page.PunchHtml;
import covewalk.report.page.Sheets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The report as a PDF, from the HTML of the same page. A usual report is laid out in one go, a long one in parts, on all
 * processors. It is tagged for reading aids unless it is very long: the tags of thousands of pages would not fit into memory.
 */
public final class PunchPdf {

    /** Of a part, some 20 pages; with more, a heap of 512 MiB, usual for Java on a tablet of 2 GiB, no longer holds the tags. */
    private static final int MOST_TAGGED = 12;

    /** No tag of ours is a guess; the merger says so outright, at which some readers stumble. */
    private static final COSName SUSPECTS = COSName.getPDFName("Suspects");

    private final PunchHtml html = new PunchHtml();
    private final PdfFonts fonts = new PdfFonts();

    /** A run of pages, written, so that nothing of its layout stays in memory. */
    private record Laid(byte[] pdf, List<PdfHeading> headings) {
    }

    public void write(Page page, OutputStream out) throws IOException {
        List<Sheets> parts = Sheets.parts(page);
        if (parts.size() == 1) {
            PdfPart part = PdfPart.of(html(page, parts.get(0)), fonts, true);
            try (PDDocument document = part.document()) {
                finish(document, part.headings(), page, true, out);
            }
        } else {
            boolean tagged = parts.size() <= MOST_TAGGED;
            bind(page, laid(page, parts, tagged), tagged, out);
        }
    }

    /** What the type cannot show is said to whoever reads the paper. */
    private String html(Page page, Sheets sheets) {
        PrintableText plain = fonts.printable(html.of(page, sheets));
        return plain.lacking().isEmpty() || !sheets.begins() ? plain.text()
                : fonts.printable(html.of(page, sheets.remarking(page.words().text("page.letters", plain.named())))).text();
    }

    private List<Laid> laid(Page page, List<Sheets> parts, boolean tagged) throws IOException {
        try {
            return parts.parallelStream().map(part -> laid(page, part, tagged)).toList();
        } catch (UncheckedIOException unwritten) {
            throw unwritten.getCause();
        }
    }

    private Laid laid(Page page, Sheets sheets, boolean tagged) {
        try {
            PdfPart part = PdfPart.of(html(page, sheets), fonts, tagged);
            try (PDDocument document = part.document()) {
                document.getDocumentCatalog().setMetadata(null);
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                document.save(bytes, CompressParameters.NO_COMPRESSION);
                return new Laid(bytes.toByteArray(), part.headings());
            }
        } catch (IOException unwritten) {
            throw new UncheckedIOException(unwritten);
        }
    }

    private void bind(Page page, List<Laid> parts, boolean tagged, OutputStream out) throws IOException {
        List<PDDocument> open = new ArrayList<>();
        List<PdfHeading> headings = new ArrayList<>();
        try (PDDocument document = new PDDocument()) {
            for (Laid part : parts) {
                int before = document.getNumberOfPages();
                part.headings().forEach(heading -> headings.add(heading.after(before)));
                open.add(Loader.loadPDF(part.pdf()));
                append(document, open.get(open.size() - 1), tagged);
            }
            finish(document, headings, page, tagged, out);
        } finally {
            for (PDDocument part : open) {
                part.close();
            }
        }
    }

    private static void append(PDDocument document, PDDocument part, boolean tagged) throws IOException {
        if (!tagged) {
            part.getPages().forEach(document::addPage);
            return;
        }
        new PDFMergerUtility().appendDocument(document, part);
        document.getDocumentCatalog().getMarkInfo().getCOSObject().removeItem(SUSPECTS);
    }

    private void finish(PDDocument document, List<PdfHeading> headings, Page page, boolean tagged, OutputStream out) throws IOException {
        new PdfHeads(document, fonts, page.head()).write();
        PdfOutline.write(document, headings);
        PdfIdentity.write(document, page, tagged);
        document.save(out);
    }
}
