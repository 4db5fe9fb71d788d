package covewalk.plot;

import covewalk.plot.Paint.Ink;
import covewalk.plot.Shape.Anchor;
import covewalk.plot.Shape.Point;
import covewalk.survey.Placement;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Station;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The strip of one cove for somebody who walks it: low, as wide as asked for, with a mark where the next reading is taken.
 * The same from top to bottom as {@link Strip}, without the numbers below it.
 */
public final class LowStrip {

    private static final double HEIGHT = 26.5;
    private static final double MARGIN = 5;
    private static final double SCALE_Y = 8;
    private static final double REELS_Y = 9;
    private static final double REELS_HEIGHT = 4.2;
    private static final double BAND_Y = 14;
    private static final double BAND_HEIGHT = 5;
    private static final double TICKS_Y = 19.5;
    private static final double JOINTS_Y = 24;
    private static final double TEXT = 2.7;
    private static final double WIDEST_MARK = 9;
    private static final double BAR = 1.4;

    private final CoveJudgement cove;
    private final Words words;
    private final Scale scale;
    private final List<Shape> shapes = new ArrayList<>();

    private LowStrip(CoveJudgement cove, Words words, double widthMm) {
        this.cove = cove;
        this.words = words;
        this.scale = new Scale(cove.cove().lengthM(), MARGIN, widthMm - 2 * MARGIN);
    }

    /**
     * @param widthMm of the picture, above 30
     * @param hereM where the next reading is taken; empty where none is
     */
    public static Picture of(CoveJudgement cove, Words words, double widthMm, OptionalDouble hereM) {
        LowStrip strip = new LowStrip(cove, words, Math.max(30, widthMm));
        strip.positions();
        cove.cove().placements().forEach(strip::placement);
        strip.shapes.addAll(ColourBand.of(cove, words, strip.scale, BAND_Y, BAND_HEIGHT));
        cove.stations().forEach(strip::station);
        cove.joints().forEach(strip::joint);
        hereM.ifPresent(strip::here);
        return new Picture(Math.max(30, widthMm), HEIGHT, words.text("strip.says", Shortened.of(cove.cove().id(), 40)), strip.shapes);
    }

    private void positions() {
        String datum = cove.cove().datum().isBlank() ? words.text("place.no-datum") : Shortened.of(cove.cove().datum(), 40);
        text(MARGIN, 3, Anchor.START, words.text("strip.datum", datum), Ink.STRONG);
        line(MARGIN, SCALE_Y, scale.right(), SCALE_Y, 0.25, Ink.WEAK);
        for (double at : scale.ticksM()) {
            line(scale.x(at), SCALE_Y - 0.6, scale.x(at), SCALE_Y, 0.25, Ink.WEAK);
            text(scale.x(at), SCALE_Y - 1, Anchor.MIDDLE, words.text("strip.metres", words.numbers().plain(at, 1)), Ink.WEAK);
        }
    }

    private void placement(Placement placement) {
        double x = scale.x(placement.fromM());
        double width = Math.max(0, scale.x(placement.toM()) - x);
        shapes.add(new Shape.Rectangle(x, REELS_Y, width, REELS_HEIGHT, Ink.NONE, Ink.WEAK, words.text("strip.placement",
                placement.reel(), words.numbers().metres(placement.fromM()), words.numbers().metres(placement.toM()))));
        int fits = (int) (width / 1.8);
        if (fits >= 2) {
            text(x + width / 2, REELS_Y + 3.1, Anchor.MIDDLE, Shortened.of(placement.reel(), fits), Ink.STRONG);
        }
    }

    /** Taller where a station was read more than once. */
    private void station(Station station) {
        double x = scale.x(station.positionM());
        line(x, TICKS_Y, x, TICKS_Y + (station.readings().size() > 1 ? 2.6 : 1.4), 0.35, Ink.STRONG);
    }

    private void joint(JudgedJoint joint) {
        double width = Math.max(1.5, Math.min(WIDEST_MARK, 0.6 * scale.width() / cove.joints().size()));
        double x = scale.x(joint.positionM());
        boolean beyond = joint.verdict() == Verdict.BEYOND;
        line(x, BAND_Y, x, JOINTS_Y - 2, beyond ? 0.5 : 0.2, beyond ? Ink.STRONG : Ink.WEAK);
        shapes.addAll(VerdictMark.of(joint.verdict(), joint.difference()).shapes(x, JOINTS_Y, width, BAR, words.text("strip.joint",
                words.numbers().metres(joint.positionM()), joint.reels().get(0), joint.reels().get(1), words.verdict(joint.verdict()))));
    }

    /** A pointer on the scale, and a line through all of it. */
    private void here(double atM) {
        double x = scale.x(atM);
        shapes.add(new Shape.Path(List.of(new Point(x - 1.8, SCALE_Y - 3.2), new Point(x + 1.8, SCALE_Y - 3.2), new Point(x, SCALE_Y)),
                true, 0, Ink.ACCENT, words.numbers().metres(atM)));
        line(x, SCALE_Y, x, TICKS_Y + 3, 0.6, Ink.ACCENT);
    }

    private void line(double x1, double y1, double x2, double y2, double width, Ink ink) {
        shapes.add(new Shape.Line(x1, y1, x2, y2, width, ink, ""));
    }

    private void text(double x, double y, Anchor anchor, String text, Ink ink) {
        shapes.add(new Shape.Text(x, y, TEXT, anchor, text, ink));
    }
}
