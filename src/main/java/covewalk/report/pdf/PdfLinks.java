package covewalk.report.pdf;

import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/** Says in the links of a tagged PDF what their tags say, since some reading aids look only there (PDF/UA-1, 7.18.5). */
final class PdfLinks {

    private PdfLinks() {
    }

    static void describe(PDDocument document) throws IOException {
        PDNumberTreeNode tags = document.getDocumentCatalog().getStructureTreeRoot().getParentTree();
        for (PDPage page : document.getPages()) {
            for (PDAnnotation link : page.getAnnotations()) {
                if (tags.getValue(link.getStructParent()) instanceof PDParentTreeValue tag) {
                    link.setContents(new PDStructureElement((COSDictionary) tag.getCOSObject()).getAlternateDescription());
                }
            }
        }
    }
}
