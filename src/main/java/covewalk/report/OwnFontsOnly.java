package covewalk.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers PDFBox's search for fonts with the one carried along. Its own search reads every font on the machine, writes
 * a list of them into the user's folder, and takes a second, for a font that no page uses.
 */
final class OwnFontsOnly implements FontMapper {

    private final TrueTypeFont own;

    OwnFontsOnly(byte[] font) {
        try {
            own = new TTFParser().parse(new RandomAccessReadBuffer(new ByteArrayInputStream(font)));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Whether it lacks a letter of this text. */
    boolean lacks(String text) {
        try {
            CmapLookup glyphs = own.getUnicodeCmapLookup();
            return text.codePoints().anyMatch(c -> c > ' ' && glyphs.getGlyphId(c) == 0);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(own, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
        return new FontMapping<>(own, false);
    }

    @Override
    public CIDFontMapping getCIDFont(String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
        return new CIDFontMapping(null, own, true);
    }
}
