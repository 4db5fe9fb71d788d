package covewalk.report.punch;

import covewalk.survey.Reel;
import covewalk.survey.ReelsById;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which of the reels beside one it is best compared with: the one that fits its other neighbours best. */
public final class Neighbour {

    private Neighbour() {
    }

    /**
     * Of those beside it, the one with the fewest joints beyond the limit; among such the one with the most within, then the
     * first along the coves. Empty where it hangs alone.
     */
    public static Optional<Reel> toCompare(Judgement judgement, Reel reel) {
        List<String> beside = new ArrayList<>();
        for (CoveJudgement cove : judgement.coves()) {
            cove.joints().stream().filter(joint -> joint.reels().contains(reel.id())).flatMap(joint -> joint.reels().stream())
                    .filter(other -> !other.equals(reel.id()) && !beside.contains(other)).forEach(beside::add);
        }
        ReelsById reels = new ReelsById(judgement.survey());
        return beside.stream().min(Comparator.<String>comparingLong(other -> joints(judgement, other, Verdict.BEYOND))
                .thenComparingLong(other -> -joints(judgement, other, Verdict.WITHIN))).flatMap(reels::find);
    }

    private static long joints(Judgement judgement, String reel, Verdict verdict) {
        return judgement.coves().stream().flatMap(cove -> cove.joints().stream()).filter(joint -> joint.reels().contains(reel))
                .map(JudgedJoint::verdict).filter(verdict::equals).count();
    }
}
