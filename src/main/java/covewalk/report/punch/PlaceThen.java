package covewalk.report.punch;

import covewalk.survey.file.punch.PunchPlace;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one visit found at a place that another visit knows too: the same cove, the same kind, the same reels, within
 * {@link PunchItem#SAME_PLACE_M}.
 *
 * @param difference empty where it was not read
 * @param limitSteps the limit of that visit
 */
public record PlaceThen(Verdict verdict, Optional<Difference> difference, double limitSteps, double positionM) {

    public static Optional<PlaceThen> in(Judgement judgement, PunchPlace place) {
        return judgement.coves().stream().flatMap(cove -> at(cove, place, judgement.survey().limits().neighbourSteps()))
                .min(Comparator.comparingDouble(then -> Math.abs(then.positionM() - place.positionM())));
    }

    /** What lies at the place of a joint where one of its reels is another now, as after a replacement; empty for anything but a joint. */
    static Optional<OtherReels> ofOtherReels(Judgement judgement, PunchPlace place) {
        return judgement.coves().stream()
                .filter(cove -> cove.cove().id().equals(place.cove()) && place.kind().equals(FaultKind.JOINT.code()))
                .flatMap(cove -> cove.joints().stream()).filter(joint -> isNear(joint.positionM(), place))
                .min(Comparator.comparingDouble(joint -> Math.abs(joint.positionM() - place.positionM())))
                .map(joint -> new OtherReels(String.join(" | ", joint.reels()), of(joint, judgement.survey().limits().neighbourSteps())));
    }

    /**
     * @param reels ids, datum's side first
     * @param there what was found at their joint
     */
    record OtherReels(String reels, PlaceThen there) {
    }

    static boolean isNear(double positionM, PunchPlace place) {
        return Math.abs(positionM - place.positionM()) <= PunchItem.SAME_PLACE_M;
    }

    private static Stream<PlaceThen> at(CoveJudgement cove, PunchPlace place, double limitSteps) {
        if (place.kind().equals(FaultKind.JOINT.code())) {
            return cove.joints().stream().filter(joint -> isAt(place, cove, joint)).map(joint -> of(joint, limitSteps));
        }
        return cove.faults().stream().filter(fault -> isAt(place, cove, fault))
                .map(fault -> new PlaceThen(fault.verdict(), Optional.of(fault.difference()), fault.limitSteps(), fault.positionM()));
    }

    private static PlaceThen of(JudgedJoint joint, double limitSteps) {
        return new PlaceThen(joint.verdict(), joint.difference(), limitSteps, joint.positionM());
    }

    private static boolean isAt(PunchPlace place, CoveJudgement cove, JudgedJoint joint) {
        return isNear(joint.positionM(), place)
                && PunchPlace.of(cove.cove().id(), place.kind(), 0, joint.reels()).isLike(place);
    }

    private static boolean isAt(PunchPlace place, CoveJudgement cove, Fault fault) {
        return place.positionM() >= fault.fromM() - PunchItem.SAME_PLACE_M
                && place.positionM() <= fault.toM() + PunchItem.SAME_PLACE_M
                && PunchPlace.of(cove.cove().id(), fault.kind().code(), 0, fault.reels()).isLike(place);
    }
}
