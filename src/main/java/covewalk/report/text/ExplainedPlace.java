package covewalk.report.text;

import covewalk.survey.Placement;
import covewalk.verdict.Budget;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Note;
import covewalk.verdict.Settle;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Stretch;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A place whose verdict can be explained: a joint, or a fault that is none.
 *
 * @param fromM where it begins, m; a joint is a single point
 * @param sides the stretches on both sides at a joint or change, else the one it lies in; empty where not read
 * @param rounds from 1 at a joint; 0 where not counted
 */
record ExplainedPlace(FaultKind kind, double positionM, double fromM, double toM, List<String> reels,
                      List<Stretch> sides, Optional<Difference> difference, double limitSteps, Confidence confidence,
                      Verdict verdict, Settle settle, int rounds, Budget budget, List<Note> notes) {

    /** The place nearest to a position, where there is any. */
    static Optional<ExplainedPlace> nearest(CoveJudgement cove, double limitSteps, double positionM) {
        Stream<ExplainedPlace> joints = cove.joints().stream().map(joint -> of(cove, joint, limitSteps));
        Stream<ExplainedPlace> others = cove.faults().stream().filter(fault -> fault.kind() != FaultKind.JOINT)
                .map(fault -> of(cove, fault));
        return Stream.concat(joints, others).min(Comparator.comparingDouble(place -> place.distanceTo(positionM)));
    }

    /** How far a position lies from it, m; a position inside a long place is told from one at a joint by its length. */
    private double distanceTo(double atM) {
        double outside = Math.max(0, Math.max(fromM - atM, atM - toM));
        return outside > 0 ? outside : (toM - fromM) * 1e-3;
    }

    private static ExplainedPlace of(CoveJudgement cove, JudgedJoint joint, double limitSteps) {
        List<Stretch> sides = Stream.of(
                side(cove, joint.joint().before(), joint.setUp(), Comparator.comparingDouble(Stretch::toM)),
                side(cove, joint.joint().after(), joint.setUp(), Comparator.comparingDouble(Stretch::fromM).reversed()))
                .flatMap(Optional::stream).toList();
        return new ExplainedPlace(FaultKind.JOINT, joint.positionM(), joint.positionM(), joint.positionM(), joint.reels(),
                sides, joint.difference(), limitSteps, joint.confidence(), joint.verdict(), joint.settle(),
                joint.rounds(), joint.budget(), joint.notes());
    }

    private static Optional<Stretch> side(CoveJudgement cove, Placement placement, String setUp, Comparator<Stretch> order) {
        return cove.stretches().stream()
                .filter(stretch -> stretch.placement() == placement && stretch.setUp().equals(setUp)).max(order);
    }

    private static ExplainedPlace of(CoveJudgement cove, Fault fault) {
        List<Stretch> sides = cove.stretches().stream()
                .filter(stretch -> fault.placements().contains(stretch.placement()))
                .filter(stretch -> stretch.fromM() <= fault.positionM() && fault.positionM() <= stretch.toM())
                .toList();
        return new ExplainedPlace(fault.kind(), fault.positionM(), fault.fromM(), fault.toM(), fault.reels(), sides,
                Optional.of(fault.difference()), fault.limitSteps(), fault.confidence(), fault.verdict(), fault.settle(),
                0, fault.budget(), fault.notes());
    }
}
