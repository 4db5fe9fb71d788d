package covewalk.report.pdf;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.AbstractOutputDevice;
import com.openhtmltopdf.render.FSFont;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Paints the shapes that a page's pictures are made of: {@code line}, {@code rect}, {@code path} of straight pieces and
 * {@code text}. Only the geometry of AWT is used, never its fonts: those need a font on the machine.
 */
final class PdfPainter {

    private final OutputDevice out;
    private final RenderingContext context;
    private final double x;
    private final double y;
    private final double scale;

    /** @param scale dots per unit of the picture, whose corner lies at x, y */
    PdfPainter(OutputDevice out, RenderingContext context, double x, double y, double scale) {
        this.out = out;
        this.context = context;
        this.x = x;
        this.y = y;
        this.scale = scale;
    }

    void paint(Element picture) {
        for (Node child = picture.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                shape(element);
            }
        }
    }

    private void shape(Element element) {
        switch (element.getTagName()) {
            case "line" -> fillAndDraw(element, new Line2D.Double(atX(element, "x1"), atY(element, "y1"), atX(element, "x2"),
                    atY(element, "y2")));
            case "rect" -> fillAndDraw(element, new Rectangle2D.Double(atX(element, "x"), atY(element, "y"),
                    number(element, "width") * scale, number(element, "height") * scale));
            case "path" -> fillAndDraw(element, path(element.getAttribute("d")));
            case "text" -> text(element);
            default -> { } // titles are read, not painted
        }
    }

    private void fillAndDraw(Element element, Shape shape) {
        String fill = element.getAttribute("fill");
        if (!fill.equals("none") && !(shape instanceof Line2D)) {
            out.setColor(colour(fill));
            out.fill(shape);
        }
        if (element.hasAttribute("stroke")) {
            out.setColor(colour(element.getAttribute("stroke")));
            out.setStroke(new BasicStroke((float) (number(element, "stroke-width") * scale), BasicStroke.CAP_BUTT,
                    BasicStroke.JOIN_MITER));
            out.draw(shape);
        }
    }

    /** M and L with two numbers each, and Z. */
    private Shape path(String pieces) {
        Path2D path = new Path2D.Double();
        String[] parts = pieces.replaceAll("[MLZ]", " ").strip().split("\\s+");
        for (int i = 0; i + 1 < parts.length; i += 2) {
            double px = x + Double.parseDouble(parts[i]) * scale;
            double py = y + Double.parseDouble(parts[i + 1]) * scale;
            if (i == 0) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
        }
        if (pieces.endsWith("Z")) {
            path.closePath();
        }
        return path;
    }

    private void text(Element element) {
        FontSpecification asked = font(number(element, "font-size") * scale);
        FSFont font = context.getFont(asked);
        String text = element.getTextContent();
        double width = context.getTextRenderer().getWidth(context.getFontContext(), font, text);
        double left = switch (element.getAttribute("text-anchor")) {
            case "middle" -> width / 2;
            case "end" -> width;
            default -> 0;
        };
        out.setColor(colour(element.getAttribute("fill")));
        out.setFont(font);
        if (out instanceof AbstractOutputDevice device) {
            device.setFontSpecification(asked); // else it thickens the text when what was written before was bold
        }
        context.getTextRenderer().drawString(out, text, (float) (atX(element, "x") - left), (float) atY(element, "y"));
    }

    private static FontSpecification font(double size) {
        FontSpecification font = new FontSpecification();
        font.families = new String[] {PdfFonts.FAMILY};
        font.size = (float) size;
        font.fontWeight = IdentValue.NORMAL;
        font.fontStyle = IdentValue.NORMAL;
        font.variant = IdentValue.NORMAL;
        return font;
    }

    private double atX(Element element, String attribute) {
        return x + number(element, attribute) * scale;
    }

    private double atY(Element element, String attribute) {
        return y + number(element, attribute) * scale;
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** As #rrggbb; black where nothing is said. */
    private static FSRGBColor colour(String hex) {
        return hex.isEmpty() ? FSRGBColor.BLACK : new FSRGBColor(Integer.parseInt(hex.substring(1), 16));
    }
}
