package covewalk.report.pdf;

import covewalk.report.page.RunningHead;
import covewalk.report.text.PlainText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Writes the running head onto every page, once all pages are there and can be counted. */
final class PdfHeads {

    private static final float SIZE = 7.5f;
    private static final float MM = 72 / 25.4f;
    private static final float SIDE = 14 * MM;
    private static final float TOP = 9.5f * MM;

    private final PDDocument document;
    private final PdfFonts fonts;
    private final PDFont regular;
    private final RunningHead head;
    private PDFont spare;

    PdfHeads(PDDocument document, PdfFonts fonts, RunningHead head) throws IOException {
        this.document = document;
        this.fonts = fonts;
        this.regular = fonts.regularIn(document);
        this.head = head;
    }

    /** Letters in a row that one font has. */
    private record Run(PDFont font, String text) {

        float width() throws IOException {
            return font.getStringWidth(text) / 1000 * SIZE;
        }
    }

    void write() throws IOException {
        int pages = document.getNumberOfPages();
        List<Run> left = runs(head.left());
        int number = 0;
        for (PDPage page : document.getPages()) {
            number++;
            List<Run> right = runs(head.right(number, pages));
            float width = page.getMediaBox().getWidth();
            float y = page.getMediaBox().getHeight() - TOP;
            try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
                out.beginMarkedContent(COSName.ARTIFACT); // reading aids pass over it
                text(out, left, SIDE, y);
                text(out, right, width - SIDE - width(right), y);
                out.setLineWidth(0.2f * MM);
                out.moveTo(SIDE, y - 1.2f * MM);
                out.lineTo(width - SIDE, y - 1.2f * MM);
                out.stroke();
                out.endMarkedContent();
            }
        }
    }

    private static void text(PDPageContentStream out, List<Run> runs, float x, float y) throws IOException {
        out.beginText();
        out.newLineAtOffset(x, y);
        for (Run run : runs) {
            out.setFont(run.font(), SIZE);
            out.showText(run.text());
        }
        out.endText();
    }

    private static float width(List<Run> runs) throws IOException {
        float width = 0;
        for (Run run : runs) {
            width += run.width();
        }
        return width;
    }

    private List<Run> runs(String head) throws IOException {
        String text = fonts.printable(PlainText.calm(head)).text(); // a control character has no glyph
        List<Run> runs = new ArrayList<>();
        int from = 0;
        while (from < text.length()) {
            int to = endOfRun(text, from);
            runs.add(new Run(fonts.regularHas(text.codePointAt(from)) ? regular : spare(), text.substring(from, to)));
            from = to;
        }
        return runs;
    }

    private int endOfRun(String text, int from) {
        boolean regularHas = fonts.regularHas(text.codePointAt(from));
        int to = from;
        while (to < text.length() && fonts.regularHas(text.codePointAt(to)) == regularHas) {
            to += Character.charCount(text.codePointAt(to));
        }
        return to;
    }

    private PDFont spare() throws IOException {
        if (spare == null) {
            spare = fonts.spareIn(document);
        }
        return spare;
    }
}
