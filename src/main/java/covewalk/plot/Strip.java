package covewalk.plot;

import covewalk.plot.Paint.Ink;
import covewalk.plot.Shape.Anchor;
import covewalk.survey.Placement;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.FaultKind;
import covewalk.verdict.stretch.Station;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * One cove in full width, its datum at the left: position scale, placements, the amplified colours of its stretches,
 * ticks of its stations and the marks of its joints. A closed cove is drawn open at its datum, its last joint at both
 * ends.
 */
public final class Strip {

    private static final double WIDTH = 180;
    private static final double MARGIN = 5;
    private static final double SCALE_Y = 8;
    private static final double REELS_Y = 11;
    private static final double REELS_HEIGHT = 5;
    private static final double BAND_Y = 17;
    private static final double BAND_HEIGHT = 9;
    private static final double TICKS_Y = 27;
    private static final double JOINTS_Y = 35;

    private final CoveJudgement cove;
    private final Words words;
    private final Scale scale;
    private final List<Shape> shapes = new ArrayList<>();

    private Strip(CoveJudgement cove, Words words) {
        this.cove = cove;
        this.words = words;
        this.scale = new Scale(cove.cove().lengthM(), MARGIN, WIDTH - 2 * MARGIN);
    }

    public static Picture of(CoveJudgement cove, Words words) {
        Strip strip = new Strip(cove, words);
        strip.positions();
        strip.placements();
        strip.shapes.addAll(ColourBand.of(cove, words, strip.scale, BAND_Y, BAND_HEIGHT));
        strip.stations();
        strip.shapes.addAll(new JointMarks(cove, words, strip.scale, BAND_Y, JOINTS_Y).shapes());
        return new Picture(WIDTH, strip.height(), words.text("strip.says", Shortened.of(cove.cove().id(), 40)), strip.shapes);
    }

    /** As much as there is to draw below the band. */
    private double height() {
        boolean brackets = cove.faults().stream().anyMatch(fault -> fault.kind() != FaultKind.JOINT);
        return brackets ? JOINTS_Y + 15 : JOINTS_Y + (cove.joints().isEmpty() ? -4 : 10);
    }

    private void positions() {
        String datum = cove.cove().datum().isBlank() ? words.text("place.no-datum") : Shortened.of(cove.cove().datum(), 80);
        text(MARGIN, 3, 3, Anchor.START, words.text("strip.datum", datum), Ink.STRONG);
        line(MARGIN, SCALE_Y, scale.right(), SCALE_Y, 0.25, Ink.WEAK, "");
        for (double at : scale.ticksM()) {
            line(scale.x(at), SCALE_Y, scale.x(at), SCALE_Y + 1.5, 0.25, Ink.WEAK, "");
            text(scale.x(at), SCALE_Y - 1, 2.6, Anchor.MIDDLE, words.text("strip.metres", words.numbers().plain(at, 1)), Ink.WEAK);
        }
    }

    private void placements() {
        for (Placement placement : cove.cove().placements()) {
            double x = scale.x(placement.fromM());
            double width = Math.max(0, scale.x(placement.toM()) - x);
            shapes.add(new Shape.Rectangle(x, REELS_Y, width, REELS_HEIGHT, Ink.NONE, Ink.WEAK, words.text("strip.placement",
                    placement.reel(), words.numbers().metres(placement.fromM()), words.numbers().metres(placement.toM()))));
            int fits = (int) (width / 1.8);
            if (fits >= 2) {
                text(x + width / 2, REELS_Y + 3.5, 3, Anchor.MIDDLE, Shortened.of(placement.reel(), fits), Ink.STRONG);
            }
        }
    }

    /** Taller where a station was read more than once. */
    private void stations() {
        for (Station station : cove.stations()) {
            double length = station.readings().size() > 1 ? 3 : 1.5;
            line(scale.x(station.positionM()), TICKS_Y, scale.x(station.positionM()), TICKS_Y + length, 0.25, Ink.WEAK, "");
        }
    }

    private void line(double x1, double y1, double x2, double y2, double width, Ink ink, String says) {
        shapes.add(new Shape.Line(x1, y1, x2, y2, width, ink, says));
    }

    private void text(double x, double y, double size, Anchor anchor, String text, Ink ink) {
        shapes.add(new Shape.Text(x, y, size, anchor, text, ink));
    }
}
