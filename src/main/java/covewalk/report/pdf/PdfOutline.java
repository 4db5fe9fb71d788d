package covewalk.report.pdf;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** The bookmarks of a PDF: its sections, and their stops and coves. */
final class PdfOutline {

    private PdfOutline() {
    }

    static void write(PDDocument document, List<PdfHeading> headings) {
        PDDocumentOutline outline = new PDDocumentOutline();
        List<PDPage> pages = new ArrayList<>(); // the tree of pages counts from the first one each time it is asked
        document.getPages().forEach(pages::add);
        PDOutlineNode section = outline;
        for (PdfHeading heading : headings) {
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(heading.text());
            PDPageXYZDestination to = new PDPageXYZDestination();
            to.setPage(pages.get(heading.page()));
            to.setTop(Math.round(heading.y()));
            item.setDestination(to);
            (heading.top() ? outline : section).addLast(item);
            section = heading.top() ? item : section;
        }
        document.getDocumentCatalog().setDocumentOutline(outline);
        document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
    }
}
