package covewalk.plot;

import covewalk.colour.Covariance;
import covewalk.colour.StepPlane;
import covewalk.colour.UvPrime;
import covewalk.plot.Paint.Ink;
import covewalk.plot.Shape.Anchor;
import covewalk.plot.Shape.Point;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Steps from the cove's target, or from its mean where it has none, against position, in two lanes: along the Planckian
 * locus (up is cooler) and across it (up is greener). Each stretch is a line in a band of two standard uncertainties
 * either way, each station a dot.
 */
public final class Profile {

    private static final double HEIGHT = 45;
    private static final double LEFT = StripFrame.MARGIN_MM;
    private static final double LANE = 17;

    private final CoveMean mean;
    private final CoveJudgement cove;
    private final Origin origin;
    private final LocusAxes axes;
    private final StripFrame frame;
    private final Scale scale;
    private final Words words;
    private final double reach;
    private final List<Shape> shapes = new ArrayList<>();

    private Profile(CoveJudgement cove, CoveMean mean, Origin origin, StepPlane plane, Words words, StripFrame frame) {
        this.cove = cove;
        this.mean = mean;
        this.origin = origin;
        this.axes = new LocusAxes(plane, origin.colour(), origin.white());
        this.words = words;
        this.frame = frame;
        this.scale = frame.scale();
        this.reach = Math.max(1, Math.ceil(farthest()));
    }

    /**
     * @param plane in which the cove's steps are counted
     * @return empty where nothing was read, or where neither target nor mean has a CCT
     */
    public static Optional<Picture> of(CoveJudgement cove, StepPlane plane, Words words) {
        return of(cove, plane, words, StripFrame.page(cove.cove()));
    }

    /** @param frame of the strip that it belongs to; it always shows the whole cove */
    public static Optional<Picture> of(CoveJudgement cove, StepPlane plane, Words words, StripFrame frame) {
        CoveMean mean = new CoveMean(cove);
        return Origin.of(cove.cove(), mean).map(origin -> new Profile(cove, mean, origin, plane, words, frame).picture());
    }

    private Picture picture() {
        String steps = words.numbers().plain(reach, 0);
        String from = words.text(origin.key("profile.from."));
        lane(4 + LANE / 2, true, words.text(frame.low() ? "profile.along.low" : "profile.along", from, steps));
        lane(HEIGHT - 1.5 - LANE / 2, false, words.text(frame.low() ? "profile.across.low" : "profile.across", from, steps));
        return new Picture(frame.widthMm(), HEIGHT, words.text("profile.says", Shortened.of(cove.cove().id(), 40), from), shapes);
    }

    private void lane(double middle, boolean along, String caption) {
        text(LEFT, middle - LANE / 2 - 1, caption);
        line(LEFT, middle, scale.right(), middle, origin.isTarget() ? 0.4 : 0.15);
        number(middle, "0");
        for (int sign : new int[] {-1, 1}) {
            double y = middle - sign * LANE / 2;
            line(LEFT, y, scale.right(), y, 0.1);
            number(y, (sign > 0 ? "+" : "\u2212") + words.numbers().plain(reach, 0));
        }
        mean.stretches().forEach(stretch -> stretch(stretch, middle, along));
    }

    private void stretch(Stretch stretch, double middle, boolean along) {
        double x1 = scale.x(stretch.fromM());
        double x2 = scale.x(stretch.toM());
        double y1 = y(stretch.line().at(stretch.fromM()), middle, along);
        double y2 = y(stretch.line().at(stretch.toM()), middle, along);
        double band1 = 2 * axes.sd(whole(stretch, stretch.fromM()), along) / reach * LANE / 2;
        double band2 = 2 * axes.sd(whole(stretch, stretch.toM()), along) / reach * LANE / 2;
        shapes.add(new Shape.Path(List.of(new Point(x1, y1 - band1), new Point(x2, y2 - band2), new Point(x2, y2 + band2),
                new Point(x1, y1 + band1)), true, 0, Ink.FAINT, ""));
        shapes.add(new Shape.Line(x1, y1, x2, y2, 0.5, Ink.ACCENT, ""));
        for (Station station : stretch.stations()) {
            dot(scale.x(station.positionM()), y(station.mean(), middle, along));
        }
    }

    private static Covariance whole(Stretch stretch, double positionM) {
        return stretch.line().shrinkingAt(positionM).sum().plus(stretch.line().common());
    }

    private void dot(double x, double y) {
        shapes.add(new Shape.Rectangle(x - 0.4, y - 0.4, 0.8, 0.8, Ink.STRONG, Ink.NONE, ""));
    }

    private double y(UvPrime colour, double middle, boolean along) {
        return middle - (along ? axes.along(colour) : axes.across(colour)) / reach * LANE / 2;
    }

    private double farthest() {
        return mean.stretches().stream().flatMap(stretch -> stretch.stations().stream()).map(Station::mean)
                .mapToDouble(colour -> Math.max(Math.abs(axes.along(colour)), Math.abs(axes.across(colour)))).max().orElse(1);
    }

    private void line(double x1, double y1, double x2, double y2, double width) {
        shapes.add(new Shape.Line(x1, y1, x2, y2, width, Ink.WEAK, ""));
    }

    private void number(double y, String number) {
        shapes.add(new Shape.Text(LEFT - 0.6, y + 0.8, 2.2, Anchor.END, number, Ink.WEAK));
    }

    private void text(double x, double y, String text) {
        shapes.add(new Shape.Text(x, y, 2.6, Anchor.START, text, Ink.WEAK));
    }
}
