package covewalk.verdict.trial;

import covewalk.verdict.CoveJudgement;
import covewalk.verdict.stretch.Stretch;
import covewalk.verdict.trial.ReelCase.Seen;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Reels with and without changes of colour inside them. */
final class ReelTrials {

    /**
     * @param found share of coves whose one change is seen as one change
     * @param held of these, the share whose stated range holds the true place
     */
    record Placed(double steps, int changes, double found, double held) {
    }

    private ReelTrials() {
    }

    /** Coves of one colour a reel: whatever is seen in them is a false alarm. */
    static List<ReelCase> withoutAChange() {
        List<ReelCase> cases = new ArrayList<>();
        for (int lengthM : new int[] {5, 10, 20, 60}) {
            cases.add(even(lengthM + " m, noise as declared", lengthM, 2 * lengthM, cove -> { }));
        }
        cases.add(even("10 m, scatter 0.4 step", 10, 20, cove -> cove.scatterSteps = 0.4));
        cases.add(even("30 m, scatter 0.8 step", 30, 60, cove -> cove.scatterSteps = 0.8));
        cases.add(even("10 m, scatter 0.6 step, three times longer along u'", 10, 20,
                cove -> JointTrials.scatterAlongU(cove, 0.6, 3)));
        cases.add(even("20 m, scatter 0.6 step along u' alone", 20, 40, cove -> JointTrials.scatterAlongU(cove, 0.6, 1000)));
        cases.add(even("5 m, 4 stations, scatter 0.4 step", 5, 4, cove -> cove.scatterSteps = 0.4));
        cases.add(even("5 m, 6 stations, scatter 0.4 step", 5, 6, cove -> cove.scatterSteps = 0.4));
        cases.add(even("5 m, 8 stations, scatter 0.4 step", 5, 8, cove -> cove.scatterSteps = 0.4));
        cases.add(even("10 m, x, y to 4 decimals", 10, 20, cove -> cove.digits = TrueCove.Digits.XY_4));
        cases.add(even("10 m, x, y to 4 decimals, quiet meter", 10, 20, cove -> {
            cove.digits = TrueCove.Digits.XY_4;
            cove.meterSteps = 0.05;
            cove.declaredSteps = 0.05;
        }));
        cases.add(even("10 m, CCT to 10 K, Duv to 3 decimals", 10, 20, cove -> cove.digits = TrueCove.Digits.CCT_10_DUV_3));
        cases.add(new ReelCase("six reels of 5 m, scatter 0.4 step", Seen.NOTHING, cove -> {
            cove.scatterSteps = 0.4;
            for (int i = 0; i < 6; i++) {
                double steps = i % 3;
                cove.reel(5 * i, 5 * i + 5).walk(5 * i, 5 * i + 5, 10, atM -> steps, i);
            }
        }));
        return cases;
    }

    private static ReelCase even(String name, int lengthM, int stations, Consumer<TrueCove> settings) {
        return new ReelCase(name, Seen.NOTHING,
                settings.andThen(cove -> cove.reel(0, lengthM).walk(0, lengthM, stations, atM -> 0, 0)));
    }

    /** A reel of 10 m read at 20 stations, whose colour changes at some place two metres or more from its ends. */
    static Placed change(double steps, int trials) {
        int found = 0;
        int held = 0;
        for (int seed = 0; seed < trials; seed++) {
            TrueCove cove = new TrueCove(7919L * seed + Double.hashCode(steps));
            cove.scatterSteps = 0.4;
            double place = cove.uniform(2, 8);
            CoveJudgement judged = cove.begin().reel(0, 10).walk(0, 10, 20, atM -> atM < place ? 0 : steps, 0).judged();
            if (ReelCase.seen(judged) == Seen.ONE_CHANGE) {
                Stretch.Range range = judged.stretches().get(1).begins();
                found++;
                held += range.fromM() <= place && place <= range.toM() ? 1 : 0;
            }
        }
        return new Placed(steps, found, (double) found / trials, (double) held / Math.max(1, found));
    }

    /** Reels of 5 m read at 20 stations, with something plain to any eye, or with nothing. */
    static List<ReelCase> plain() {
        return List.of(drift(0), drift(4), once(2), once(4), fiveMetres("one wild reading, 6 steps off", Seen.LONE_STATION,
                cove -> cove.walk(0, 5, 20, atM -> 0, 0).wild(2.3, 6)));
    }

    /** The same with less: whether it is seen is a matter of chance. */
    static List<ReelCase> faint() {
        return List.of(drift(1), drift(2), once(1));
    }

    private static ReelCase drift(int steps) {
        return fiveMetres("drifts by " + steps + " steps", steps == 0 ? Seen.NOTHING : Seen.DRIFT,
                cove -> cove.walk(0, 5, 20, atM -> steps * atM / 5, 0));
    }

    private static ReelCase once(int steps) {
        return fiveMetres("changes once by " + steps + " steps", Seen.ONE_CHANGE,
                cove -> cove.walk(0, 5, 20, atM -> atM < 2.5 ? 0 : steps, 0));
    }

    private static ReelCase fiveMetres(String name, Seen truth, Consumer<TrueCove> walk) {
        Consumer<TrueCove> noise = cove -> cove.scatterSteps = 0.2;
        return new ReelCase(name, truth, noise.andThen(cove -> cove.reel(0, 5)).andThen(walk));
    }
}
