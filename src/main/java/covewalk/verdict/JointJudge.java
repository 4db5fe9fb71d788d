package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.colour.StepPlane;
import covewalk.survey.Cove;
import covewalk.survey.Joint;
import covewalk.survey.Limits;
import covewalk.survey.Placement;
import covewalk.survey.Reel;
import covewalk.survey.ReelsById;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.evidence.Evidence;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.LastStation;
import covewalk.verdict.stretch.PlacementRow;
import covewalk.verdict.stretch.Stretch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Judges the joints of one cove: at each the two stretches that meet there. */
final class JointJudge {

    private record Pair(SetUp setUp, Covariance drift, Comparison comparison, Stretch left, Stretch right) {
        double variance() {
            return comparison.along(comparison.covariance());
        }
    }

    private final Survey survey;
    private final ReelsById reels;
    private final List<Stretch> stretches;
    private final List<PlacementRow> rows;
    private final StepPlane plane;
    private final Evidence evidence;
    private final double rateOfOne;

    /** @param rateOfOne error rate of a joint by itself, as in {@link Rates#ofOneJoint} */
    JointJudge(Survey survey, ReelsById reels, Cove cove, List<PlacementRow> rows, List<Stretch> stretches,
               Evidence evidence, double rateOfOne) {
        this.survey = survey;
        this.reels = reels;
        this.stretches = stretches;
        this.rows = rows;
        this.plane = Planes.of(survey, cove);
        this.evidence = evidence;
        this.rateOfOne = rateOfOne;
    }

    /** The verdict on one joint, by the set-up that knows the difference best. */
    JudgedJoint judge(Joint joint) {
        return survey.setUps().stream()
                .flatMap(setUp -> pair(joint, setUp).stream())
                .min(Comparator.comparingDouble(Pair::variance))
                .map(pair -> judged(joint, pair))
                .orElseGet(() -> notRead(joint));
    }

    private Optional<Pair> pair(Joint joint, SetUp setUp) {
        Optional<Stretch> before = nearest(joint.before(), setUp, Comparator.comparingDouble(Stretch::toM).reversed());
        Optional<Stretch> after = nearest(joint.after(), setUp, Comparator.comparingDouble(Stretch::fromM));
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        Stretch left = before.get();
        Stretch right = after.get();
        if (left == right && !left.line().drifts()) { // a closed cove lit by one reel of one colour: compare its ends
            left = left.half(false);
            right = right.half(true);
        }
        Covariance drift = evidence.leftOpen(left.stations(), right.stations());
        boolean oneLine = left == right;
        Comparison comparison = new Comparison(oneLine ? Drifts.end(left) : Side.atEnd(left, joint.before().toM()),
                oneLine ? Drifts.start(right) : Side.atEnd(right, joint.after().fromM()), unlike(joint, setUp).plus(drift), plane);
        return Optional.of(new Pair(setUp, drift, comparison, left, right));
    }

    private Optional<Stretch> nearest(Placement placement, SetUp setUp, Comparator<Stretch> order) {
        return stretches.stream()
                .filter(stretch -> stretch.placement() == placement && stretch.setUp().equals(setUp.id()))
                .min(order);
    }

    private Covariance unlike(Joint joint, SetUp setUp) {
        return mayBeUnlike(joint) ? Covariance.isotropic(setUp.unlikeUv()) : Covariance.ZERO;
    }

    private boolean mayBeUnlike(Joint joint) {
        Optional<Reel> one = reels.find(joint.before().reel());
        Optional<Reel> other = reels.find(joint.after().reel());
        return one.isEmpty() || other.isEmpty() || one.get() != other.get() && one.get().mayBeUnlike(other.get());
    }

    private JudgedJoint judged(Joint joint, Pair pair) {
        Comparison comparison = pair.comparison();
        double limit = survey.limits().neighbourSteps();
        Confidence confidence = comparison.confidence(limit);
        Verdict verdict = confidence.at(Rates.forRound(survey.limits(), comparison.rounds()));
        return new JudgedJoint(joint, pair.setUp().id(), Optional.of(comparison.difference()), confidence, verdict,
                settle(comparison, verdict),
                comparison.rounds(), Budgets.of(comparison, pair.setUp(), Budget.Part.UNLIKE_REELS, pair.drift()), notes(joint, pair));
    }

    /** Where all joints share one error rate, none is settled before all are judged. */
    private Settle settle(Comparison comparison, Verdict verdict) {
        Limits limits = survey.limits();
        boolean shared = limits.errorPer() == Limits.ErrorPer.SURVEY;
        return Settling.of(comparison, shared ? Verdict.UNSETTLED : verdict, limits.neighbourSteps(), rateOfOne,
                Settle.WhyNot.UNLIKE_REELS);
    }

    private JudgedJoint notRead(Joint joint) {
        boolean both = wasRead(joint.before()) && wasRead(joint.after());
        return new JudgedJoint(joint, "", Optional.empty(), Confidence.NONE, Verdict.NOT_READ,
                Settle.never(both ? Settle.WhyNot.DIFFERENT_SETUPS : Settle.WhyNot.NOT_READ), 0, Budget.NONE, List.of());
    }

    private boolean wasRead(Placement placement) {
        return stretches.stream().anyMatch(stretch -> stretch.placement() == placement);
    }

    private List<Note> notes(Joint joint, Pair pair) {
        List<Note> notes = new ArrayList<>(Notes.of(pair.comparison()));
        if (mayBeUnlike(joint)) {
            notes.add(Note.of(Note.Kind.UNLIKE_REELS));
        }
        int leftOut = rows.stream()
                .filter(row -> row.setUp() == pair.setUp())
                .filter(row -> row.placement() == joint.before() || row.placement() == joint.after())
                .mapToInt(row -> row.nearJoint().size()).sum();
        if (leftOut > 0) {
            notes.add(Note.of(Note.Kind.LEFT_OUT_NEAR_JOINT, leftOut));
        }
        LastStation.off(pair.left(), joint.before().toM()).ifPresent(off -> notes.add(note(off, joint.before())));
        LastStation.off(pair.right(), joint.after().fromM()).ifPresent(off -> notes.add(note(off, joint.after())));
        return notes;
    }

    private Note note(LastStation off, Placement placement) {
        return Note.of(Note.Kind.LAST_STATION_OFF, placement.reel(), off.station().positionM(),
                String.format(Locale.ROOT, "%.2f", plane.steps(off.du(), off.dv())));
    }
}
