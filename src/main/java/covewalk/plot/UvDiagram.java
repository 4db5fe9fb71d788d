package covewalk.plot;

import covewalk.colour.StepPlane;
import covewalk.colour.StepRule;
import covewalk.colour.UvPrime;
import covewalk.plot.Paint.Ink;
import covewalk.plot.Shape.Anchor;
import covewalk.survey.Limits;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import covewalk.words.Numbers;
import covewalk.words.Shortened;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A cove's colours in the CIE 1976 u', v' diagram, both axes to one scale: the Planckian locus, rings of equal steps
 * about the target (about the mean where there is none), the stations, and the mean of each stretch with two standard
 * uncertainties about it.
 */
public final class UvDiagram {

    private static final double WIDTH = 88;
    private static final double HEIGHT = 76;
    /** Of the name of a reel, mm. */
    private static final double NAME_HIGH = 2.6;
    private static final double LETTER_WIDE = 1.6;
    private static final int MOST_SAID = 12;
    private static final int LONGEST = 20;

    private final CoveJudgement cove;
    private final CoveMean mean;
    private final Origin origin;
    private final StepPlane plane;
    private final double limitSteps;
    private final Words words;
    private final Numbers numbers;
    private final UvFrame frame;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Shape.Point> labelled = new ArrayList<>();

    private UvDiagram(CoveJudgement cove, CoveMean mean, Origin origin, StepPlane plane, double limitSteps, Words words) {
        this.cove = cove;
        this.mean = mean;
        this.origin = origin;
        this.plane = plane;
        this.limitSteps = limitSteps;
        this.words = words;
        this.numbers = words.numbers();
        this.frame = UvFrame.around(Stream.concat(UvRings.steps(origin.colour(), plane, limitSteps).stream(),
                Stream.concat(stations().map(Station::mean), mean.stretches().stream().map(UvDiagram::middle))).toList());
    }

    /**
     * @param plane in which the cove's steps are counted
     * @return empty where nothing was read, or where neither target nor mean has a CCT
     */
    public static Optional<Picture> of(CoveJudgement cove, StepPlane plane, Limits limits, Words words) {
        CoveMean mean = new CoveMean(cove);
        return Origin.of(cove.cove(), mean).map(origin -> new UvDiagram(cove, mean, origin, plane,
                origin.isTarget() ? limits.targetSteps().orElse(limits.neighbourSteps()) : limits.neighbourSteps(), words).picture());
    }

    private Picture picture() {
        axes();
        shapes.addAll(LocusPiece.of(frame, words));
        rings();
        stations().forEach(station -> dot(frame.point(station.mean())));
        labelled.add(originLabel());
        mean.stretches().forEach(this::stretch);
        origin();
        legend();
        return new Picture(WIDTH, HEIGHT, says(), shapes);
    }

    private Stream<Station> stations() {
        return mean.stretches().stream().flatMap(stretch -> Stream.concat(stretch.stations().stream(), stretch.aside().stream()));
    }

    private static UvPrime middle(Stretch stretch) {
        return stretch.line().at(stretch.middleM());
    }

    private void axes() {
        double bottom = UvFrame.Y + UvFrame.HEIGHT;
        shapes.add(new Shape.Rectangle(UvFrame.X, UvFrame.Y, UvFrame.WIDTH, UvFrame.HEIGHT, Ink.NONE, Ink.WEAK, ""));
        for (double u : frame.ticksU()) {
            line(frame.x(u), bottom, frame.x(u), bottom + 1, 0.25);
            text(frame.x(u), bottom + 3.4, Anchor.MIDDLE, numbers.fixed(u, frame.decimals()), Ink.WEAK);
        }
        for (double v : frame.ticksV()) {
            line(UvFrame.X - 1, frame.y(v), UvFrame.X, frame.y(v), 0.25);
            text(UvFrame.X - 1.4, frame.y(v) + 0.8, Anchor.END, numbers.fixed(v, frame.decimals()), Ink.WEAK);
        }
        text(UvFrame.X + UvFrame.WIDTH, bottom + 6, Anchor.END, "u'", Ink.STRONG);
        text(1, UvFrame.Y + 2, Anchor.START, "v'", Ink.STRONG);
    }

    /** A ring for each whole step inside the limit, and the limit's own, which is the strongest. */
    private void rings() {
        for (int step = 1; step < limitSteps && limitSteps <= 10; step++) {
            ring(step, 0.15);
        }
        ring(limitSteps, 0.45);
        Shape.Point top = frame.point(UvRings.steps(origin.colour(), plane, limitSteps).get(45));
        String key = limitSteps == 1 ? "uv.steps.one" : "uv.steps.more";
        text(top.x() + 0.6, top.y() + 2.4, Anchor.START, words.text(key, numbers.plain(limitSteps, 2)), Ink.WEAK);
    }

    private void ring(double steps, double width) {
        shapes.add(new Shape.Path(UvRings.steps(origin.colour(), plane, steps).stream().map(frame::point).toList(), false, width,
                Ink.WEAK, ""));
    }

    private void dot(Shape.Point at) {
        shapes.add(new Shape.Rectangle(at.x() - 0.35, at.y() - 0.35, 0.7, 0.7, Ink.WEAK, Ink.NONE, ""));
    }

    private void stretch(Stretch stretch) {
        UvPrime colour = middle(stretch);
        Shape.Point at = frame.point(colour);
        List<Shape.Point> ring = UvRings.uncertainty(colour, stretch.line().shrinkingAt(stretch.middleM()).sum()
                .plus(stretch.line().common())).stream().map(frame::point).toList();
        shapes.add(new Shape.Path(ring, false, 0.3, Ink.ACCENT, ""));
        cross(at, 1.2, 0.5);
        label(ring, at.y() + 0.9, Shortened.of(stretch.placement().reel(), LONGEST));
    }

    /** Beside a ring, so that no line goes through the name: right of it, or left where the frame ends; not upon another name. */
    private void label(List<Shape.Point> ring, double y, String name) {
        double right = ring.stream().mapToDouble(Shape.Point::x).max().orElseThrow() + 0.6;
        double left = ring.stream().mapToDouble(Shape.Point::x).min().orElseThrow() - 0.6;
        boolean fits = right + name.length() * LETTER_WIDE < UvFrame.X + UvFrame.WIDTH;
        Shape.Point at = new Shape.Point(fits ? right : left, y);
        if (labelled.stream().allMatch(other -> Math.abs(other.x() - at.x()) > 8 || Math.abs(other.y() - at.y()) > NAME_HIGH)) {
            labelled.add(at);
            shapes.add(new Shape.Text(at.x(), at.y(), NAME_HIGH, fits ? Anchor.START : Anchor.END, name, Ink.STRONG));
        }
    }

    private void cross(Shape.Point at, double arm, double width) {
        shapes.add(new Shape.Line(at.x() - arm, at.y(), at.x() + arm, at.y(), width, Ink.STRONG, ""));
        shapes.add(new Shape.Line(at.x(), at.y() - arm, at.x(), at.y() + arm, width, Ink.STRONG, ""));
    }

    /** A target is a diamond with its name; a mean needs no mark but its own. */
    private void origin() {
        Shape.Point at = frame.point(origin.colour());
        double arm = origin.isTarget() ? 1.6 : 0.8;
        shapes.add(new Shape.Path(List.of(new Shape.Point(at.x() - arm, at.y()), new Shape.Point(at.x(), at.y() - arm),
                new Shape.Point(at.x() + arm, at.y()), new Shape.Point(at.x(), at.y() + arm), new Shape.Point(at.x() - arm, at.y())),
                false, 0.35, Ink.STRONG, ""));
        text(originLabel().x(), originLabel().y(), Anchor.START, words.text(origin.key("uv.")), Ink.STRONG);
    }

    private Shape.Point originLabel() {
        Shape.Point at = frame.point(origin.colour());
        return new Shape.Point(at.x() + 1.8, at.y() + 2.6);
    }

    private void legend() {
        text(1, HEIGHT - 3.6, Anchor.START, words.text(origin.key("uv.legend."), said(), rule()), Ink.WEAK);
        text(1, HEIGHT - 0.6, Anchor.START, words.text("uv.legend.marks"), Ink.WEAK);
    }

    private String said() {
        return limitSteps > 1 && limitSteps <= 10 ? "1, \u2026, " + numbers.plain(limitSteps, 2) : numbers.plain(limitSteps, 2);
    }

    private String rule() {
        return plane.rule() == StepRule.UV_CIRCLE ? words.text("uv.circle", numbers.fixed(UvPrime.STEP, 4)) : plane.name();
    }

    private String says() {
        String about = words.text(origin.key("uv.says."), numbers.fixed(origin.colour().u(), 4), numbers.fixed(origin.colour().v(), 4),
                said());
        String stretches = mean.stretches().stream().limit(MOST_SAID).map(this::says).collect(Collectors.joining(" "));
        int more = mean.stretches().size() - MOST_SAID;
        return words.text("uv.says", Shortened.of(cove.cove().id(), LONGEST), about,
                more > 0 ? stretches + " " + words.text("uv.says.more", numbers.fixed(more, 0)) : stretches);
    }

    private String says(Stretch stretch) {
        UvPrime colour = middle(stretch);
        return words.text("uv.says.stretch", Shortened.of(stretch.placement().reel(), LONGEST), numbers.fixed(colour.u(), 4),
                numbers.fixed(colour.v(), 4));
    }

    private void line(double x1, double y1, double x2, double y2, double width) {
        shapes.add(new Shape.Line(x1, y1, x2, y2, width, Ink.WEAK, ""));
    }

    private void text(double x, double y, Anchor anchor, String text, Ink ink) {
        shapes.add(new Shape.Text(x, y, 2.2, anchor, text, ink));
    }
}
