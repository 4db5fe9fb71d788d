package covewalk.report.pdf;

import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer.SVGImage;
import com.openhtmltopdf.render.RenderingContext;
import org.w3c.dom.Element;

/**
 * One picture of a page, sized as the page asks: as wide as it says, else as it was drawn, its sides in proportion.
 * Lengths of the PDF are in dots, those of the picture in the units of its view box.
 */
final class PdfPicture implements SVGImage {

    private static final double PIXELS_PER_MM = 96 / 25.4; // CSS 2.1, 4.3.2

    private final Element svg;
    private final double dotsPerUnit;
    private final double width;
    private final double height;

    PdfPicture(Element svg, double cssWidth, double cssHeight, double dotsPerPixel) {
        this.svg = svg;
        String[] box = svg.getAttribute("viewBox").split(" ");
        double units = Double.parseDouble(box[2]);
        double ratio = Double.parseDouble(box[3]) / units;
        double drawn = Double.parseDouble(svg.getAttribute("width").replace("mm", "")) * PIXELS_PER_MM * dotsPerPixel;
        width = cssWidth > 0 ? cssWidth : cssHeight > 0 ? cssHeight / ratio : drawn;
        height = width * ratio;
        dotsPerUnit = width / units;
    }

    @Override
    public int getIntrinsicWidth() {
        return (int) Math.round(width);
    }

    @Override
    public int getIntrinsicHeight() {
        return (int) Math.round(height);
    }

    @Override
    public void drawSVG(OutputDevice out, RenderingContext context, double x, double y) {
        new PdfPainter(out, context, x, y, dotsPerUnit).paint(svg);
    }
}
