package covewalk.plot;

import covewalk.plot.Paint.Ink;
import covewalk.plot.Shape.Anchor;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The marks of a cove's joints and other faults below its band, with the steps of those that ask for action. */
final class JointMarks {

    private static final double WIDEST = 9;
    private static final double BAR = 1.5;
    private static final double NUMBER = 3.2;

    private final CoveJudgement cove;
    private final Words words;
    private final StripFrame frame;
    private final Scale scale;
    private final double bandY;
    private final double y;
    private final double width;
    private final double numbersY;
    private double bracketY;
    private boolean labels = true;
    private final List<Shape> shapes = new ArrayList<>();
    private double lastLabelX = Double.NEGATIVE_INFINITY;
    /** Labels of brackets so far: the middle of each, and half its width. */
    private final List<Shape.Point> labelled = new ArrayList<>();
    private int row;

    JointMarks(CoveJudgement cove, Words words, StripFrame frame, double bandY, double y) {
        this.cove = cove;
        this.words = words;
        this.frame = frame;
        this.scale = frame.scale();
        this.bandY = bandY;
        this.y = y;
        long shown = cove.joints().stream().filter(joint -> scale.shows(joint.positionM())).count();
        this.width = Math.max(1.5, Math.min(WIDEST, 0.6 * scale.width() / Math.max(1, shown)));
        this.numbersY = y + (frame.low() ? 4.9 : 5.5);
        this.bracketY = y + (frame.low() ? 7 : 10.5);
    }

    /** Marks and brackets alone, the brackets at this height. */
    List<Shape> withoutLabels(double bracketsY) {
        labels = false;
        bracketY = bracketsY;
        return shapes();
    }

    List<Shape> shapes() {
        for (JudgedJoint joint : cove.joints()) {
            if (joint.joint().closing()) {
                mark(joint, 0);
            }
            mark(joint, joint.positionM());
        }
        cove.faults().stream().filter(fault -> fault.kind() != FaultKind.JOINT && scale.shows(fault.fromM(), fault.toM()))
                .sorted(Comparator.comparing(Fault::verdict)).forEach(this::bracket); // what is beyond gets its label first
        return shapes;
    }

    private void mark(JudgedJoint joint, double positionM) {
        if (!scale.shows(positionM)) {
            return;
        }
        double x = scale.x(positionM);
        Ink ink = joint.verdict() == Verdict.BEYOND ? Ink.STRONG : Ink.WEAK;
        shapes.add(new Shape.Line(x, bandY, x, y - 2.5, joint.verdict() == Verdict.BEYOND ? 0.5 : 0.2, ink, ""));
        shapes.addAll(VerdictMark.of(joint.verdict(), joint.difference()).shapes(x, y, width, BAR, says(joint)));
        if (labels && (joint.verdict() == Verdict.BEYOND || joint.verdict() == Verdict.UNSETTLED)) {
            joint.difference().ifPresent(difference -> label(x, words.numbers().fixed(difference.steps(), 1), ink));
        }
    }

    /** Faults that are no joint: a bracket over the range in which they lie. */
    private void bracket(Fault fault) {
        double from = scale.x(fault.fromM()) - 0.5;
        double to = scale.x(fault.toM()) + 0.5;
        Ink ink = fault.verdict() == Verdict.BEYOND ? Ink.STRONG : Ink.WEAK;
        double at = bracketY;
        shapes.add(new Shape.Path(List.of(new Shape.Point(from, at - 1.2), new Shape.Point(from, at), new Shape.Point(to, at),
                new Shape.Point(to, at - 1.2)), false, fault.verdict() == Verdict.BEYOND ? 0.5 : 0.25, ink,
                words.text("strip.fault", words.kind(fault.kind()), words.verdict(fault.verdict()))));
        bracketLabel((from + to) / 2, at + 3, words.text("strip.fault-label", words.kind(fault.kind()),
                words.numbers().fixed(fault.difference().steps(), 1)), ink);
    }

    /** Left out where it would run into another; the bracket says the same to who points at it. */
    private void bracketLabel(double x, double labelY, String text, Ink ink) {
        double half = text.length() * 0.7;
        double inside = frame.low() ? Math.max(half, Math.min(frame.widthMm() - half, x)) : x; // a screen cuts what sticks out
        if (labels && labelled.stream().allMatch(other -> Math.abs(other.x() - inside) > other.y() + half)) {
            labelled.add(new Shape.Point(inside, half));
            shapes.add(new Shape.Text(inside, labelY, 2.6, Anchor.MIDDLE, text, ink));
        }
    }

    /** Steps below their mark; where the last label is too near, one row lower. */
    private void label(double x, String text, Ink ink) {
        row = x - lastLabelX < 8 ? 1 - row : 0;
        lastLabelX = x;
        shapes.add(new Shape.Text(x, numbersY + row * NUMBER, NUMBER, Anchor.MIDDLE, text, ink));
    }

    private String says(JudgedJoint joint) {
        return words.text("strip.joint", words.lengths().first(joint.positionM()), joint.reels().get(0), joint.reels().get(1),
                words.verdict(joint.verdict()));
    }
}
