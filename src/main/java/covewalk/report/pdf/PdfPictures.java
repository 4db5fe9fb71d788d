package covewalk.report.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/** Puts the pictures of a page into its PDF as lines, areas and text, so that they stay sharp and can be searched. */
final class PdfPictures implements SVGDrawer {

    @Override
    public SVGImage buildSVGImage(Element svg, Box box, CssContext css, double cssWidth, double cssHeight, double dotsPerPixel) {
        return new PdfPicture(svg, cssWidth, cssHeight, dotsPerPixel);
    }

    /** The pictures use the page's own fonts. */
    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        // none to import
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {
        // none to add
    }

    @Override
    public void close() {
        // holds nothing open
    }
}
