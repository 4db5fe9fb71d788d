package covewalk.report.pdf;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers PDFBox's search for fonts with the one carried along. Its own search reads every font on the machine, writes
 * a list of them into the user's folder, and takes a second, for a font that no page uses.
 */
record OwnFontsOnly(TrueTypeFont own) implements FontMapper {

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
