package covewalk.verdict.trial;

import covewalk.verdict.CoveJudgement;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Line;
import java.util.List;

/** Reading again: until it is settled, and as often as was asked for. */
final class RoundTrials {

    /** Rounds after which even a patient foreman goes home. */
    private static final int ROUNDS = 10;

    /** @param settled share of those with a number that were settled by so many more readings */
    record Asked(String name, int asked, double settled) {
    }

    private RoundTrials() {
    }

    static List<JointCase> readAgain() {
        return List.of(JointCase.twoReels("one reading a side", 1, 1, 1, 2, 0, cove -> { }),
                JointCase.twoReels("four stations a side, scatter 0.4 step", 4, 4, 1, 2, 0, cove -> cove.scatterSteps = 0.4));
    }

    /** Joints at the limit, read again at new places, or at the old ones, until something is said of them. */
    static Shares untilSettled(JointCase first, boolean newPlaces, int readings, int trials) {
        return Shares.of(trials, seed -> List.of(untilSettled(first.cove(seed), newPlaces, readings)));
    }

    private static Verdict untilSettled(TrueCove cove, boolean newPlaces, int readings) {
        Verdict verdict = joint(cove).verdict();
        for (int round = 2; round <= ROUNDS && verdict == Verdict.UNSETTLED; round++) {
            double further = newPlaces ? 0.05 * round : 0;
            cove.station(0.5 + further, 0, 0, readings, round).station(9.5 - further, 2, 0, readings, round);
            verdict = joint(cove).verdict();
        }
        return verdict;
    }

    /** Of joints that ask for more readings: how many are settled by as many, if their difference is as it seems. */
    static Asked asAskedFor(JointCase first, int trials) {
        int asked = 0;
        int settled = 0;
        for (int seed = 0; seed < trials; seed++) {
            TrueCove cove = first.cove(seed);
            CoveJudgement judged = cove.judged();
            JudgedJoint joint = judged.joints().get(0);
            if (joint.verdict() == Verdict.UNSETTLED && joint.settle().readings().isPresent()) {
                asked++;
                settled += after(cove, judged, joint.settle().readings().getAsInt()) == Verdict.UNSETTLED ? 0 : 1;
            }
        }
        return new Asked(first.name(), asked, (double) settled / Math.max(1, asked));
    }

    /** So many more a side, evenly along the reels, whose colours are made just what they seem to be up to the joint. */
    private static Verdict after(TrueCove cove, CoveJudgement judged, int more) {
        Line before = judged.stretches().stream().filter(stretch -> stretch.toM() == 5).findFirst().orElseThrow().ending().line();
        Line after = judged.stretches().stream().filter(stretch -> stretch.fromM() == 5).findFirst().orElseThrow().ending().line();
        for (int i = 0; i < more; i++) {
            double atM = 5 * (i + 0.4) / more;
            cove.again(atM, before.at(atM), 2);
            cove.again(5 + atM, after.at(5 + atM), 2);
        }
        return joint(cove).verdict();
    }

    private static JudgedJoint joint(TrueCove cove) {
        CoveJudgement judged = cove.judged();
        return judged.joints().get(0);
    }

    static List<JointCase> differencesThatAskForMore() {
        return List.of(
                JointCase.twoReels("2.6 steps, one reading a side", 1, 1, 1, 2.6, 0, cove -> { }),
                JointCase.twoReels("1.4 steps, one reading a side", 1, 1, 1, 1.4, 1, cove -> { }),
                JointCase.twoReels("3.2 steps, two stations a side, scatter 0.4 step", 2, 2, 1, 3.2, 0,
                        cove -> cove.scatterSteps = 0.4),
                JointCase.twoReels("0.8 steps, three stations a side, scatter 0.4 step", 3, 3, 1, 0.8, 0,
                        cove -> cove.scatterSteps = 0.4),
                JointCase.twoReels("2.8 steps, eight stations a side, scatter 0.4 step", 8, 8, 1, 2.8, 0,
                        cove -> cove.scatterSteps = 0.4),
                JointCase.twoReels("2.4 steps, three stations a side, scatter 0.4 step", 3, 3, 1, 2.4, 0,
                        cove -> cove.scatterSteps = 0.4),
                JointCase.twoReels("2.4 steps, x, y to 4 decimals, three stations a side", 3, 3, 1, 2.4, 0,
                        cove -> cove.digits = TrueCove.Digits.XY_4));
    }
}
