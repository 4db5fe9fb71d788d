package covewalk.app.strip;

import covewalk.survey.Limits;
import covewalk.survey.Placement;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Note;
import covewalk.verdict.Settle;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A place with a verdict: a joint, whatever its verdict, or a fault that is none.
 *
 * @param cove in which it lies
 * @param joint empty where it is none
 * @param fault empty where there is nothing to act on
 * @param limitSteps the limit it was judged against
 */
public record Finding(CoveJudgement cove, Optional<JudgedJoint> joint, Optional<Fault> fault, double limitSteps) {

    /** Along a cove from its datum. */
    static final Comparator<Finding> ALONG = Comparator.comparingDouble(Finding::positionM);

    /** All of a cove, along it; a fault at a joint and the joint are one. */
    public static List<Finding> in(CoveJudgement cove, Limits limits) {
        Map<List<Placement>, Fault> atJoints = cove.faults().stream().filter(fault -> fault.kind() == FaultKind.JOINT)
                .collect(Collectors.toMap(Fault::placements, Function.identity(), (one, other) -> one));
        Stream<Finding> joints = cove.joints().stream().map(joint -> new Finding(cove, Optional.of(joint),
                Optional.ofNullable(atJoints.get(List.of(joint.joint().before(), joint.joint().after()))), limits.neighbourSteps()));
        Stream<Finding> others = cove.faults().stream().filter(fault -> fault.kind() != FaultKind.JOINT)
                .map(fault -> new Finding(cove, Optional.empty(), Optional.of(fault), fault.limitSteps()));
        return Stream.concat(joints, others).sorted(ALONG).toList();
    }

    public FaultKind kind() {
        return joint.isPresent() ? FaultKind.JOINT : fault.orElseThrow().kind();
    }

    /** Where to go, m from the datum. */
    public double positionM() {
        return joint.map(JudgedJoint::positionM).orElseGet(() -> fault.orElseThrow().positionM());
    }

    /** Where it may begin, m. */
    public double fromM() {
        return joint.map(JudgedJoint::positionM).orElseGet(() -> fault.orElseThrow().fromM());
    }

    /** Where it may end, m. */
    public double toM() {
        return joint.map(JudgedJoint::positionM).orElseGet(() -> fault.orElseThrow().toM());
    }

    /** The reels' ids, datum's side first. */
    public List<String> reels() {
        return joint.map(JudgedJoint::reels).orElseGet(() -> fault.orElseThrow().reels());
    }

    public Verdict verdict() {
        return joint.map(JudgedJoint::verdict).orElseGet(() -> fault.orElseThrow().verdict());
    }

    /** Empty where a side was not read. */
    public Optional<Difference> difference() {
        return joint.map(JudgedJoint::difference).orElseGet(() -> fault.map(Fault::difference));
    }

    public Confidence confidence() {
        return joint.map(JudgedJoint::confidence).orElseGet(() -> fault.orElseThrow().confidence());
    }

    public Settle settle() {
        return joint.map(JudgedJoint::settle).orElseGet(() -> fault.orElseThrow().settle());
    }

    public List<Note> notes() {
        return joint.map(JudgedJoint::notes).orElseGet(() -> fault.orElseThrow().notes());
    }

    /** How many times the limit was measured; 0 where nothing was. */
    public double timesTheLimit() {
        return difference().map(difference -> difference.steps() / limitSteps).orElse(0.0);
    }

    /** Whether it is the same place in another judgement; a change within a reel may have moved along it meanwhile. */
    public boolean sameAs(Finding other) {
        return cove.cove().id().equals(other.cove.cove().id()) && kind() == other.kind() && reels().equals(other.reels())
                && closing() == other.closing();
    }

    private boolean closing() {
        return joint.map(judged -> judged.joint().closing()).orElse(false);
    }

    /** Whether it covers a length, and is not at one place of it. */
    public boolean spreads() {
        return kind() == FaultKind.DRIFT || kind() == FaultKind.OFF_TARGET;
    }
}
