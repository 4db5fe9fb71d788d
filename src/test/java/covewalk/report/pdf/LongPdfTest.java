package covewalk.report.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.report.page.Page;
import covewalk.report.page.Pages;
import covewalk.report.page.Sheets;
import covewalk.report.punch.Sample;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A report too long to be laid out in one go: the sample's three coves over and over. */
class LongPdfTest {

    @Test
    void keepsItsTagsThoughLaidOutInParts() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(16))) {
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertTrue(new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8)
                    .contains("pdfuaid:part"));
            PDNumberTreeNode tags = document.getDocumentCatalog().getStructureTreeRoot().getParentTree();
            Set<COSBase> inTree = new HashSet<>();
            collect(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), inTree);
            for (PDPage page : document.getPages()) {
                COSArray ofPage = (COSArray) ((PDParentTreeValue) tags.getValue(page.getStructParents())).getCOSObject();
                assertTrue(ofPage.size() > 0, "no tag on a page");
                for (int i = 0; i < ofPage.size(); i++) {
                    assertTrue(inTree.contains(ofPage.getObject(i)), "a tag that nobody comes to");
                }
            }
        }
    }

    @Test
    void isTheSameBytesEachTime() throws IOException {
        assertArrayEquals(pdf(16), pdf(16));
    }

    @Test
    @Tag("long")
    void isNotTaggedWhereItIsVeryLongAndDoesNotSayItIs() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(120))) {
            assertTrue(document.getNumberOfPages() > 150, document.getNumberOfPages() + " pages");
            assertNull(document.getDocumentCatalog().getStructureTreeRoot());
            assertFalse(new String(document.getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8)
                    .contains("pdfuaid:part"));
        }
    }

    private static byte[] pdf(int times) throws IOException {
        Judgement sample = Sample.judgement();
        List<CoveJudgement> coves = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            coves.addAll(sample.coves());
        }
        Page page = Pages.of(new Judgement(sample.survey(), coves, sample.notes(), sample.claims()), "7F3K-22QD");
        assertTrue(Sheets.parts(page).size() > 1, "one part");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PunchPdf().write(page, out);
        return out.toByteArray();
    }

    private static void collect(COSBase tag, Set<COSBase> found) {
        if (tag instanceof COSArray many) {
            for (int i = 0; i < many.size(); i++) {
                collect(many.getObject(i), found);
            }
        } else if (tag instanceof COSDictionary one && found.add(one)) {
            collect(one.getDictionaryObject(COSName.K), found);
        }
    }
}
