package covewalk.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The letters that a font has. */
final class Letters {

    private final TrueTypeFont font;
    private final CmapLookup glyphs;

    Letters(byte[] bytes) {
        try {
            font = new TTFParser().parse(new RandomAccessReadBuffer(new ByteArrayInputStream(bytes)));
            glyphs = font.getUnicodeCmapLookup();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    TrueTypeFont font() {
        return font;
    }

    /** Whether it has this one; what prints nothing counts as there. */
    boolean have(int codePoint) {
        return codePoint <= ' ' || glyphs.getGlyphId(codePoint) != 0;
    }

    boolean haveAllOf(String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (!have(text.codePointAt(i))) {
                return false;
            }
        }
        return true;
    }
}
