package covewalk.verdict.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A plain line chart as SVG, for the page on verdicts. Series differ by their dashes, and each is named. */
final class Chart {

    private static final double WIDTH = 560;
    private static final double HEIGHT = 300;
    private static final double LEFT = 60;
    private static final double RIGHT = 540;
    private static final double TOP = 40;
    private static final double BOTTOM = 250;
    private static final int TICKS = 5;
    private static final List<String> DASHES = List.of("none", "7 4", "2 4");

    private record Line(String name, double[] xs, double[] ys) {
    }

    private final String title;
    private final String across;
    private final double mostX;
    private final double mostY;
    private final List<Line> lines = new ArrayList<>();

    /**
     * @param across what is counted along the foot, from 0 to {@code mostX}
     * @param mostY the largest share, as a fraction
     */
    Chart(String title, String across, double mostX, double mostY) {
        this.title = title;
        this.across = across;
        this.mostX = mostX;
        this.mostY = mostY;
    }

    Chart line(String name, double[] xs, double[] ys) {
        lines.add(new Line(name, xs, ys));
        return this;
    }

    String svg() {
        StringBuilder svg = new StringBuilder(String.format(Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" font-family=\"sans-serif\" "
                        + "font-size=\"12\">%n<title>%s</title>%n<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>%n",
                WIDTH, HEIGHT, title).replace("\r", ""));
        svg.append(text(LEFT, 22, "start", title)).append(text((LEFT + RIGHT) / 2, BOTTOM + 38, "middle", across));
        axes(svg);
        for (int i = 0; i < lines.size(); i++) {
            draw(svg, lines.get(i), DASHES.get(i), 58 + 18 * i);
        }
        return svg.append("</svg>\n").toString();
    }

    private void axes(StringBuilder svg) {
        for (int i = 0; i <= TICKS; i++) {
            double x = mostX * i / TICKS;
            double y = mostY * i / TICKS;
            svg.append(text(x(x), BOTTOM + 18, "middle", mostX >= 10 ? String.format(Locale.ROOT, "%.0f", x) : String.format(Locale.ROOT, "%.1f", x)));
            svg.append(text(LEFT - 6, y(y) + 4, "end", String.format(Locale.ROOT, "%.0f %%", 100 * y)));
            svg.append(path(LEFT, y(y), RIGHT, y(y), "#ccc"));
        }
        svg.append(path(LEFT, BOTTOM, RIGHT, BOTTOM, "#000")).append(path(LEFT, TOP, LEFT, BOTTOM, "#000"));
    }

    private void draw(StringBuilder svg, Line line, String dashes, double legendY) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < line.xs().length; i++) {
            points.append(String.format(Locale.ROOT, "%s%.1f,%.1f", i == 0 ? "" : " ", x(line.xs()[i]), y(line.ys()[i])));
        }
        svg.append(polyline(points.toString(), dashes));
        svg.append(polyline(String.format(Locale.ROOT, "350,%.0f 380,%.0f", legendY, legendY), dashes));
        svg.append(text(386, legendY + 4, "start", line.name()));
    }

    private double x(double value) {
        return LEFT + (RIGHT - LEFT) * value / mostX;
    }

    private double y(double value) {
        return BOTTOM - (BOTTOM - TOP) * value / mostY;
    }

    private static String polyline(String points, String dashes) {
        return "<polyline points=\"" + points + "\" fill=\"none\" stroke=\"#000\" stroke-width=\"1.5\" stroke-dasharray=\"" + dashes
                + "\"/>\n";
    }

    private static String path(double x1, double y1, double x2, double y2, String colour) {
        return String.format(Locale.ROOT, "<path d=\"M%.1f %.1f L%.1f %.1f\" stroke=\"%s\"/>\n", x1, y1, x2, y2, colour);
    }

    private static String text(double x, double y, String anchor, String words) {
        return String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>\n", x, y, anchor, words);
    }
}
