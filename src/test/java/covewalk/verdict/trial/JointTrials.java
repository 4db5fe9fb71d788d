package covewalk.verdict.trial;

import covewalk.colour.StepRule;
import covewalk.verdict.limit.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Joints whose true difference is known: how often are they called what. */
final class JointTrials {

    /** @param stations on each side */
    record Case(String name, int stationsBefore, int stationsAfter, int readings, double steps, double angle,
                Consumer<TrueCove> noise) {

        Verdict trial(int seed) {
            TrueCove cove = cove(seed);
            return cove.judged().joints().get(0).verdict();
        }

        TrueCove cove(int seed) {
            TrueCove cove = new TrueCove(31L * seed + name.hashCode());
            noise.accept(cove);
            cove.begin().reel(0, 5).reel(5, 10);
            for (int i = 0; i < stationsBefore; i++) {
                cove.station(0.5 + 4.0 * i / Math.max(1, stationsBefore - 1), 0, 0, readings, 1);
            }
            for (int i = 0; i < stationsAfter; i++) {
                cove.station(5.5 + 4.0 * i / Math.max(1, stationsAfter - 1), steps, angle, readings, 1);
            }
            return cove;
        }
    }

    private JointTrials() {
    }

    static List<Case> atTheLimit() {
        double diagonal = Math.PI / 4;
        List<Case> cases = new ArrayList<>();
        cases.add(new Case("one reading a side, noise as declared", 1, 1, 1, 2, 0, cove -> { }));
        cases.add(new Case("three readings a side at one place", 1, 1, 3, 2, diagonal, cove -> { }));
        cases.add(new Case("four stations a side, noise as declared", 4, 4, 1, 2, 0, cove -> { }));
        for (int k : new int[] {2, 3, 5, 10}) {
            cases.add(new Case(k + " stations a side, reels scatter by 0.4 step", k, k, 1, 2, 0,
                    cove -> cove.scatterSteps = 0.4));
        }
        cases.add(new Case("2 stations against 12, scatter 0.4 step", 2, 12, 1, 2, diagonal,
                cove -> cove.scatterSteps = 0.4));
        cases.add(new Case("10 a side twice read, scatter 0.4 step", 10, 10, 2, 2, Math.PI / 2,
                cove -> cove.scatterSteps = 0.4));
        cases.add(new Case("meter twice as noisy as declared, 8 a side twice read", 8, 8, 2, 2, 0,
                cove -> cove.meterSteps = 0.6));
        for (int degrees : new int[] {0, 45, 90}) {
            cases.add(new Case("scatter three times longer along u', difference at " + degrees + " degrees", 8, 8, 1, 2,
                    Math.toRadians(degrees), cove -> {
                        cove.scatterSteps = 0.6;
                        cove.scatterRatio = 3;
                    }));
        }
        cases.add(new Case("x, y to 4 decimals, 6 a side", 6, 6, 1, 2, 0, cove -> cove.digits = TrueCove.Digits.XY_4));
        cases.add(new Case("CCT to 1 K, Duv to 4 decimals, 6 a side", 6, 6, 1, 2, diagonal,
                cove -> cove.digits = TrueCove.Digits.CCT_1_DUV_4));
        cases.add(new Case("CCT to 10 K, Duv to 3 decimals, 6 a side", 6, 6, 1, 2, diagonal,
                cove -> cove.digits = TrueCove.Digits.CCT_10_DUV_3));
        cases.add(new Case("CCT to 10 K, Duv to 3 decimals, quiet meter", 6, 6, 1, 2, Math.PI / 2, cove -> {
            cove.digits = TrueCove.Digits.CCT_10_DUV_3;
            cove.meterSteps = 0.05;
            cove.declaredSteps = 0.05;
        }));
        cases.add(new Case("large noise against the limit: 1.2 steps, one reading", 1, 1, 1, 2, 0, cove -> {
            cove.meterSteps = 1.2;
            cove.declaredSteps = 1.2;
        }));
        cases.add(new Case("ellipse rule, 5 a side, scatter 0.4 step", 5, 5, 1, 2, diagonal, cove -> {
            cove.rule = StepRule.ELLIPSE;
            cove.scatterSteps = 0.4;
        }));
        cases.add(new Case("one wild reading before the joint, 8 a side", 8, 8, 1, 2, 0, cove -> cove.wild(2.3, 15)));
        return cases;
    }

    public static void main(String[] args) {
        int trials = args.length > 0 ? Integer.parseInt(args[0]) : 2000;
        String only = args.length > 1 ? args[1] : "";
        for (Case one : atTheLimit().stream().filter(each -> each.name().contains(only)).toList()) {
            Shares shares = Shares.of(trials, one::trial);
            System.out.printf(Locale.ROOT, "%5.1f %5.1f  %s%n", 100 * shares.beyondShare(), 100 * shares.withinShare(),
                    one.name());
        }
    }
}
