package covewalk.report;

import java.io.IOException;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Writes the running head onto every page, once all pages are there and can be counted. */
final class PdfHeads {

    private static final float SIZE = 7.5f;
    private static final float MM = 72 / 25.4f;
    private static final float SIDE = 14 * MM;
    private static final float TOP = 9.5f * MM;

    private final PDDocument document;
    private final PDFont font;
    private final RunningHead head;

    PdfHeads(PDDocument document, PDFont font, RunningHead head) {
        this.document = document;
        this.font = font;
        this.head = head;
    }

    void write() throws IOException {
        int pages = document.getNumberOfPages();
        String left = printable(head.left());
        int number = 0;
        for (PDPage page : document.getPages()) {
            number++;
            String right = printable(head.right(number, pages));
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

    private void text(PDPageContentStream out, String text, float x, float y) throws IOException {
        out.beginText();
        out.setFont(font, SIZE);
        out.newLineAtOffset(x, y);
        out.showText(text);
        out.endText();
    }

    private float width(String text) throws IOException {
        return font.getStringWidth(text) / 1000 * SIZE;
    }

    /** With a question mark for what the font does not have. */
    private String printable(String text) {
        return text.codePoints().mapToObj(Character::toString).map(c -> has(c) ? c : "?").collect(Collectors.joining());
    }

    private boolean has(String character) {
        try {
            font.encode(character);
            return true;
        } catch (IOException | IllegalArgumentException notThere) {
            return false;
        }
    }
}
