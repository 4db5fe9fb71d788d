package covewalk.report.pdf;

import covewalk.report.page.SideHtml;
import covewalk.report.page.SidePage;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A page for one reader as a tagged PDF, from the HTML of the same page. */
public final class SidePdf {

    private final SideHtml html = new SideHtml();
    private final PdfFonts fonts = new PdfFonts();

    public void write(SidePage page, OutputStream out) throws IOException {
        PdfPart part = PdfPart.of(html(page), fonts, true);
        try (PDDocument document = part.document()) {
            new PdfHeads(document, fonts, page.head()).write();
            PdfOutline.write(document, part.headings());
            PdfIdentity.write(document, page.name() + ": " + page.title(), page.language(), page.head().seal(), true);
            document.save(out);
        }
    }

    /** What the type cannot show is said to whoever reads the paper. */
    private String html(SidePage page) {
        PrintableText plain = fonts.printable(html.forPaper(page, ""));
        return plain.lacking().isEmpty() ? plain.text()
                : fonts.printable(html.forPaper(page, page.words().text("page.letters", plain.named()))).text();
    }
}
