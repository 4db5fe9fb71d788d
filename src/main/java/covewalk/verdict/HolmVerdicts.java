package covewalk.verdict;

import covewalk.survey.Limits;
import covewalk.verdict.limit.Holm;
import covewalk.verdict.limit.RoundShares;
import covewalk.verdict.limit.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Verdicts on joints with the error rate held for the whole survey: Holm's method over all joints that were read, each
 * direction at half the rate.
 */
final class HolmVerdicts {

    private HolmVerdicts() {
    }

    /** The same joints, cove by cove, with those verdicts left standing that the survey's error rate allows. */
    static List<List<JudgedJoint>> over(List<List<JudgedJoint>> coves, Limits limits) {
        double errorRate = limits.errorRate();
        List<JudgedJoint> read = coves.stream().flatMap(List::stream)
                .filter(joint -> joint.verdict() != Verdict.NOT_READ).toList();
        boolean[] beyond = stands(read, joint -> 1 - joint.confidence().beyond(), errorRate);
        boolean[] within = stands(read, joint -> 1 - joint.confidence().within(), errorRate);
        List<List<JudgedJoint>> held = new ArrayList<>();
        int next = 0;
        for (List<JudgedJoint> cove : coves) {
            List<JudgedJoint> row = new ArrayList<>();
            for (JudgedJoint joint : cove) {
                boolean counts = joint.verdict() != Verdict.NOT_READ;
                row.add(counts ? joint.as(beyond[next] ? Verdict.BEYOND : within[next] ? Verdict.WITHIN
                        : Verdict.UNSETTLED) : joint);
                next += counts ? 1 : 0;
            }
            held.add(row);
        }
        return held;
    }

    /** Reading again spends its share of the rate, so the chance of error is counted in units of that share. */
    private static boolean[] stands(List<JudgedJoint> joints, ToDoubleFunction<JudgedJoint> error, double errorRate) {
        double[] errors = joints.stream()
                .mapToDouble(joint -> Math.min(1, error.applyAsDouble(joint) / RoundShares.of(joint.rounds()))).toArray();
        return Holm.stands(errors, errorRate / 2);
    }
}
