package covewalk.plot;

import covewalk.plot.Paint.Ink;
import covewalk.plot.Shape.Anchor;
import covewalk.survey.Cove;
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

    /**
     * Where the rows stand, mm from the top.
     *
     * @param brackets height below the joints where there are other faults
     */
    private record Rows(double scaleY, double reelsY, double reelsHeight, double bandY, double bandHeight, double ticksY, double jointsY,
                        double brackets) {
    }

    private static final Rows PAGE = new Rows(8, 11, 5, 17, 9, 27, 35, 15);
    /** For a screen, where height is dear. */
    private static final Rows LOW = new Rows(3.6, 5.6, 4.4, 10.6, 5, 16, 21.5, 11);
    /** Without a scale above, and without labels below. */
    private static final Rows LOWEST = new Rows(0, 0.3, 4, 4.8, 3.6, 8.6, 13, 3.8);

    private final CoveJudgement cove;
    private final Words words;
    private final StripFrame frame;
    private final Scale scale;
    private final Rows rows;
    private final List<Shape> shapes = new ArrayList<>();

    private Strip(CoveJudgement cove, Words words, StripFrame frame, Rows rows) {
        this.cove = cove;
        this.words = words;
        this.frame = frame;
        this.scale = frame.scale();
        this.rows = rows;
    }

    /** The whole cove as it stands on a page. */
    public static Picture of(CoveJudgement cove, Words words) {
        return of(cove, words, StripFrame.page(cove.cove()));
    }

    public static Picture of(CoveJudgement cove, Words words, StripFrame frame) {
        Strip strip = new Strip(cove, words, frame, frame.low() ? LOW : PAGE);
        if (!frame.low()) {
            strip.text(StripFrame.MARGIN_MM, 3, 3, Anchor.START, datum(cove.cove(), words), Ink.STRONG);
        }
        strip.positions();
        strip.placements();
        strip.shapes.addAll(ColourBand.of(cove, words, frame, strip.rows.bandY(), strip.rows.bandHeight()));
        strip.stations();
        strip.shapes.addAll(strip.marks().shapes());
        return strip.picture(strip.height());
    }

    /**
     * Half as high, for a screen where large texts leave little room: the reels, their colours, stations and marks. Where they lie in
     * metres, and by how many steps, is said beside it.
     */
    public static Picture lowest(CoveJudgement cove, Words words, StripFrame frame) {
        Strip strip = new Strip(cove, words, frame, LOWEST);
        strip.placements();
        strip.shapes.addAll(ColourBand.of(cove, words, frame, LOWEST.bandY(), LOWEST.bandHeight()));
        strip.stations();
        strip.shapes.addAll(strip.marks().withoutLabels(LOWEST.jointsY() + 3.2));
        return strip.picture(LOWEST.jointsY() + LOWEST.brackets());
    }

    private JointMarks marks() {
        return new JointMarks(cove, words, frame, rows.bandY(), rows.jointsY());
    }

    private Picture picture(double heightMm) {
        return new Picture(frame.widthMm(), heightMm, words.text("strip.says", Shortened.of(cove.cove().id(), 40)), shapes);
    }

    /** How many times larger a strip shows differences that is left to choose by itself; 1 where nothing was read. */
    public static int timesLarger(CoveJudgement cove) {
        CoveMean mean = new CoveMean(cove);
        return mean.stretches().isEmpty() ? 1 : Amplified.of(mean, 0, false).times();
    }

    /** What is at its left, in words. */
    public static String datum(Cove cove, Words words) {
        return words.text("strip.datum", cove.datum().isBlank() ? words.text("place.no-datum") : Shortened.of(cove.datum(), 80));
    }

    /** How its colours are shown, in words, where it is left to choose by itself. */
    public static String larger(CoveJudgement cove, Words words) {
        return words.count("strip.larger", timesLarger(cove));
    }

    /** As much as there is to draw below the band; on a screen always the same, so that nothing jumps. */
    private double height() {
        boolean brackets = cove.faults().stream().anyMatch(fault -> fault.kind() != FaultKind.JOINT);
        return rows.jointsY() + (brackets || frame.low() ? rows.brackets() : cove.joints().isEmpty() ? -4 : 10);
    }

    private void positions() {
        double y = rows.scaleY();
        line(StripFrame.MARGIN_MM, y, scale.right(), y, 0.25, Ink.WEAK, "");
        for (Scale.Tick tick : scale.ticks(words.lengths().feetFirst())) {
            line(scale.x(tick.atM()), y, scale.x(tick.atM()), y + 1.5, 0.25, Ink.WEAK, "");
            text(scale.x(tick.atM()), y - 1, 2.6, Anchor.MIDDLE, words.text(words.lengths().feetFirst() ? "strip.feet" : "strip.metres",
                    words.numbers().plain(tick.label(), 1)), Ink.WEAK);
        }
    }

    private void placements() {
        for (Placement placement : cove.cove().placements()) {
            if (scale.shows(placement.fromM(), placement.toM())) {
                double x = scale.x(placement.fromM());
                placement(placement, x, Math.max(0, scale.x(placement.toM()) - x));
            }
        }
    }

    private void placement(Placement placement, double x, double width) {
        shapes.add(new Shape.Rectangle(x, rows.reelsY(), width, rows.reelsHeight(), Ink.NONE, Ink.WEAK, words.text("strip.placement",
                placement.reel(), words.lengths().first(placement.fromM()), words.lengths().first(placement.toM()))));
        int fits = (int) (width / 1.8);
        if (fits >= 2) {
            text(x + width / 2, rows.reelsY() + rows.reelsHeight() - 1.5, 3, Anchor.MIDDLE, Shortened.of(placement.reel(), fits),
                    Ink.STRONG);
        }
    }

    /** Taller where a station was read more than once. */
    private void stations() {
        for (Station station : cove.stations()) {
            if (scale.shows(station.positionM())) {
                double length = station.readings().size() > 1 ? 3 : 1.5;
                double x = scale.x(station.positionM());
                line(x, rows.ticksY(), x, rows.ticksY() + length, 0.25, Ink.WEAK, "");
            }
        }
    }

    private void line(double x1, double y1, double x2, double y2, double width, Ink ink, String says) {
        shapes.add(new Shape.Line(x1, y1, x2, y2, width, ink, says));
    }

    private void text(double x, double y, double size, Anchor anchor, String text, Ink ink) {
        shapes.add(new Shape.Text(x, y, size, anchor, text, ink));
    }
}
