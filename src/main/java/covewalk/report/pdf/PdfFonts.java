package covewalk.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The type of a PDF, carried along: a machine without any font writes the same pages. */
final class PdfFonts {

    /** As the style sheet calls it. */
    static final String FAMILY = "Lato";

    private static final int REGULAR = 400;
    private static final int BOLD = 700;
    /** Where the directory of a TrueType font begins, and how long an entry is, in bytes. */
    private static final int DIRECTORY = 12;
    private static final int ENTRY = 16;

    private final byte[] regular = bytes("Lato-Regular.ttf");
    private final byte[] bold = bytes("Lato-Bold.ttf");
    private final Letters letters = new Letters(regular);
    private SpareFont spare;

    /** A second font, for the letters that the first one lacks. */
    private record SpareFont(byte[] bytes, Letters letters) {
    }

    PdfFonts() {
        FontMappers.set(new OwnFontsOnly(letters.font()));
        XRLog.setLoggingEnabled(false); // it tells the terminal about each rule of the style sheet that only browsers know
    }

    /** What can be printed of a text. */
    PrintableText printable(String text) {
        return letters.haveAllOf(text) ? new PrintableText(text, Set.of())
                : PrintableText.of(text, c -> letters.have(c) || spare().letters().have(c));
    }

    /** Gives the fonts that a page needs to it; of each only the glyphs that are used go into the PDF. */
    void addTo(PdfRendererBuilder builder, String page) {
        builder.useFont(() -> new ByteArrayInputStream(regular), FAMILY, REGULAR, FontStyle.NORMAL, true);
        builder.useFont(() -> new ByteArrayInputStream(bold), FAMILY, BOLD, FontStyle.NORMAL, true);
        if (!letters.haveAllOf(page)) {
            builder.useFont(() -> new ByteArrayInputStream(spare().bytes()), "DejaVu Sans", REGULAR, FontStyle.NORMAL, true,
                    EnumSet.of(FSFontUseCase.FALLBACK_PRE));
        }
    }

    /** The regular font for text written straight into a document. */
    PDFont regularIn(PDDocument document) throws IOException {
        return PDType0Font.load(document, new ByteArrayInputStream(regular), true);
    }

    /** The font for what the regular one lacks. */
    PDFont spareIn(PDDocument document) throws IOException {
        return PDType0Font.load(document, new ByteArrayInputStream(spare().bytes()), true);
    }

    boolean regularHas(int codePoint) {
        return letters.have(codePoint);
    }

    /** Read when first asked for: most reports never do. */
    private synchronized SpareFont spare() {
        if (spare == null) {
            byte[] bytes = bytes("DejaVuSans.ttf");
            spare = new SpareFont(bytes, new Letters(bytes));
        }
        return spare;
    }

    /**
     * Hides the font's table of glyph substitutions (GSUB; OpenType, table directory) from PDFBox, which applies it anew to every
     * word: four fifths of the time a report takes, for ligatures that only get in the way of a search.
     */
    private static byte[] withoutLigatures(byte[] font) {
        int tables = font[4] << 8 | font[5] & 0xFF;
        for (int entry = DIRECTORY; entry < DIRECTORY + tables * ENTRY; entry += ENTRY) {
            if (new String(font, entry, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
                font[entry] = 'X';
            }
        }
        return font;
    }

    private static byte[] bytes(String name) {
        try (InputStream in = PdfFonts.class.getResourceAsStream("/covewalk/fonts/" + name)) {
            return withoutLigatures(in.readAllBytes());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
