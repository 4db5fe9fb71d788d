package covewalk.cli;

import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Difference;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import java.util.Comparator;
import java.util.List;

/** Orders the joints of each cove by their steps, largest first; those not read come last. */
final class WorstFirst {

    private static final Comparator<JudgedJoint> BY_STEPS = Comparator.comparingDouble(
            joint -> -joint.difference().map(Difference::steps).orElse(-1.0));

    private WorstFirst() {
    }

    static Judgement of(Judgement judgement) {
        List<CoveJudgement> coves = judgement.coves().stream().map(WorstFirst::of).toList();
        return new Judgement(judgement.survey(), coves, judgement.notes(), judgement.claims());
    }

    private static CoveJudgement of(CoveJudgement cove) {
        List<JudgedJoint> joints = cove.joints().stream().sorted(BY_STEPS).toList();
        return new CoveJudgement(cove.cove(), cove.stations(), cove.stretches(), joints, cove.faults());
    }
}
