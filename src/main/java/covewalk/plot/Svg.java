package covewalk.plot;

import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a picture as one SVG element, well-formed within HTML and XML alike; every text in it is escaped. */
public final class Svg {

    private final StringBuilder out = new StringBuilder();

    private Svg() {
    }

    /** The picture at its size in mm; a page may scale it. */
    public static String of(Picture picture) {
        Svg svg = new Svg();
        svg.picture(picture);
        return svg.out.toString();
    }

    private void picture(Picture picture) {
        String width = number(picture.widthMm());
        String height = number(picture.heightMm());
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"").append(width).append("mm\" height=\"")
                .append(height).append("mm\" viewBox=\"0 0 ").append(width).append(' ').append(height).append("\">");
        title(picture.says());
        picture.shapes().forEach(this::shape);
        out.append("</svg>");
    }

    private void shape(Shape shape) {
        if (shape instanceof Shape.Line line) {
            element("line", "x1=\"" + number(line.x1()) + "\" y1=\"" + number(line.y1()) + "\" x2=\"" + number(line.x2())
                    + "\" y2=\"" + number(line.y2()) + "\"" + stroke(line.paint(), line.width()), line.says());
        } else if (shape instanceof Shape.Rectangle box) {
            element("rect", "x=\"" + number(box.x()) + "\" y=\"" + number(box.y()) + "\" width=\"" + number(box.width())
                    + "\" height=\"" + number(box.height()) + "\" fill=\"" + colour(box.fill()) + "\""
                    + (box.outline() == Paint.Ink.NONE ? "" : stroke(box.outline(), 0.25)), box.says());
        } else if (shape instanceof Shape.Path path) {
            element("path", "d=\"" + pieces(path) + "\"" + (path.closed() ? " fill=\"" + colour(path.paint()) + "\""
                    : " fill=\"none\"" + stroke(path.paint(), path.width())), path.says());
        } else if (shape instanceof Shape.Text text) {
            text(text);
        }
    }

    private void text(Shape.Text text) {
        out.append("<text x=\"").append(number(text.x())).append("\" y=\"").append(number(text.y()))
                .append("\" font-size=\"").append(number(text.size())).append("\" text-anchor=\"")
                .append(text.anchor().name().toLowerCase(Locale.ROOT)).append("\" fill=\"").append(colour(text.paint()))
                .append("\">").append(escaped(text.text())).append("</text>");
    }

    private void element(String name, String attributes, String says) {
        out.append('<').append(name).append(' ').append(attributes);
        if (says.isEmpty()) {
            out.append("/>");
        } else {
            out.append('>');
            title(says);
            out.append("</").append(name).append('>');
        }
    }

    private void title(String says) {
        out.append("<title>").append(escaped(says)).append("</title>");
    }

    private static String pieces(Shape.Path path) {
        String points = path.points().stream().map(point -> number(point.x()) + " " + number(point.y()))
                .collect(Collectors.joining(" L"));
        return "M" + points + (path.closed() ? " Z" : "");
    }

    private static String stroke(Paint paint, double width) {
        return " stroke=\"" + colour(paint) + "\" stroke-width=\"" + number(width) + "\"";
    }

    /** Black and greys that a one-colour printer keeps apart, and one hue. */
    private static String colour(Paint paint) {
        if (paint instanceof Paint.Rgb rgb) {
            return String.format(Locale.ROOT, "#%02x%02x%02x", rgb.red(), rgb.green(), rgb.blue());
        }
        return switch ((Paint.Ink) paint) {
            case STRONG -> "#000000";
            case WEAK -> "#6b6b6b";
            case FAINT -> "#d4d4d4";
            case ACCENT -> "#1f4e8c";
            case NONE -> "none";
        };
    }

    /** To a hundredth of a millimetre, never with an exponent. */
    static String number(double mm) {
        long hundredths = (long) Math.rint(mm * 100); // by hand: a long report holds millions of these
        String sign = hundredths < 0 ? "-" : "";
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        return rest == 0 ? sign + whole : rest % 10 == 0 ? sign + whole + "." + rest / 10
                : sign + whole + (rest < 10 ? ".0" : ".") + rest;
    }

    /** Characters that XML does not allow are left out. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().filter(Svg::allowed).forEach(c -> {
            switch (c) {
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '&' -> safe.append("&amp;");
                case '"' -> safe.append("&#34;");
                default -> safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    private static boolean allowed(int c) {
        return c >= ' ' && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF) || c == '\t' || c == '\n';
    }
}
