package covewalk.app.site;

import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.plot.Paint.Ink;
import covewalk.plot.Picture;
import covewalk.plot.Shape;
import covewalk.plot.Shape.Anchor;
import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.Placement;
import covewalk.words.Shortened;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** A cove along its length: positions, reels, where they meet and where it is fed. Datum at the left, as everywhere. */
final class CoveDrawing {

    static final double WIDTH = 180;
    private static final double MARGIN = 5;
    private static final double HEIGHT = 30;
    private static final double SCALE_Y = 7;
    private static final double REELS_Y = 10;
    private static final double REELS_HEIGHT = 10;
    private static final double FEEDS_Y = 23;
    private static final double TEXT = 3;
    private static final double[] TICKS_M = {0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 10_000};
    private static final double[] TICKS_FT = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 5000, 50_000};
    private static final double FOOT_M = 0.3048;
    private static final double LEAST_MM = 14;

    private final Cove cove;
    private final Writing writing;
    private final Texts texts;
    private final List<Shape> shapes = new ArrayList<>();

    CoveDrawing(Cove cove, Writing writing, Texts texts) {
        this.cove = cove;
        this.writing = writing;
        this.texts = texts;
    }

    /** @param chosen the placement that stands out, by its number */
    Picture picture(OptionalInt chosen) {
        shapes.clear();
        text(MARGIN, 3, Anchor.START, cove.datum().isBlank() ? texts.get("strip.datum-unnamed") : texts.get("strip.datum", Shortened.of(cove.datum(), 60)));
        positions();
        shapes.add(new Shape.Rectangle(x(cove, 0), REELS_Y, x(cove, cove.lengthM()) - x(cove, 0), REELS_HEIGHT, Ink.NONE, Ink.FAINT, ""));
        for (int i = 0; i < cove.placements().size(); i++) {
            placement(cove.placements().get(i), chosen.isPresent() && chosen.getAsInt() == i);
        }
        Boundary.of(cove).forEach(this::grip);
        cove.feeds().forEach(this::feed);
        return new Picture(WIDTH, HEIGHT, texts.count("strip.says", cove.placements().size()), shapes);
    }

    static double x(Cove cove, double atM) {
        return MARGIN + (WIDTH - 2 * MARGIN) * Math.max(0, Math.min(1, atM / cove.lengthM()));
    }

    /** The place under a point, m; the ends of the cove beyond them. */
    static double atM(Cove cove, double xMm) {
        return cove.lengthM() * Math.max(0, Math.min(1, (xMm - MARGIN) / (WIDTH - 2 * MARGIN)));
    }

    private void positions() {
        shapes.add(new Shape.Line(x(cove, 0), SCALE_Y, x(cove, cove.lengthM()), SCALE_Y, 0.25, Ink.WEAK, ""));
        double step = step();
        for (int i = 0; i * step <= cove.lengthM(); i++) {
            double x = x(cove, i * step);
            shapes.add(new Shape.Line(x, SCALE_Y, x, SCALE_Y + 1.5, 0.25, Ink.WEAK, ""));
            if (i > 0) {
                text(x, SCALE_Y - 1, Anchor.MIDDLE, writing.feet() ? texts.get("strip.feet", Long.toString(Math.round(i * step / FOOT_M)))
                        : writing.length(i * step));
            }
        }
    }

    private double step() {
        double unit = writing.feet() ? FOOT_M : 1;
        for (double tick : writing.feet() ? TICKS_FT : TICKS_M) {
            if (tick * unit / cove.lengthM() * (WIDTH - 2 * MARGIN) >= LEAST_MM) {
                return tick * unit;
            }
        }
        return cove.lengthM();
    }

    private void placement(Placement placement, boolean chosen) {
        double x = x(cove, placement.fromM());
        double width = Math.max(0, x(cove, placement.toM()) - x);
        shapes.add(new Shape.Rectangle(x, REELS_Y, width, REELS_HEIGHT, chosen ? Ink.FAINT : Ink.NONE, chosen ? Ink.ACCENT : Ink.WEAK,
                texts.get("cove.placement", writing.length(placement.fromM()), writing.length(placement.toM()), placement.reel())));
        int fits = (int) (width / 2);
        if (fits >= 2) {
            shapes.add(new Shape.Text(x + width / 2, REELS_Y + 6.2, 3.6, Anchor.MIDDLE, Shortened.of(placement.reel(), fits), Ink.STRONG));
        }
    }

    private void grip(Boundary boundary) {
        double x = x(cove, boundary.atM());
        double height = boundary.isJoint() ? REELS_HEIGHT + 2 : REELS_HEIGHT;
        shapes.add(new Shape.Rectangle(x - 0.5, REELS_Y - (height - REELS_HEIGHT) / 2, 1, height, Ink.ACCENT, Ink.NONE,
                texts.get("strip.boundary", writing.length(boundary.atM()))));
    }

    private void feed(Feed feed) {
        double x = x(cove, feed.atM());
        shapes.add(new Shape.Path(List.of(new Shape.Point(x, FEEDS_Y - 1.5), new Shape.Point(x - 1.6, FEEDS_Y + 1.5),
                new Shape.Point(x + 1.6, FEEDS_Y + 1.5)), true, 0.25, Ink.STRONG,
                texts.get("cove.feed", writing.length(feed.atM()), feed.driver(), feed.circuit())));
        Anchor anchor = x < 2 * MARGIN ? Anchor.START : x > WIDTH - 2 * MARGIN ? Anchor.END : Anchor.MIDDLE;
        text(x, FEEDS_Y + 5, anchor, Shortened.of(feed.driver(), 12));
    }

    private void text(double x, double y, Anchor anchor, String text) {
        shapes.add(new Shape.Text(x, y, TEXT, anchor, text, Ink.WEAK));
    }
}
