package covewalk.verdict.trial;

import covewalk.colour.StepRule;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Joints that lie truly at the limit: whatever is said of them but "unsettled" is on the edge of wrong. */
final class JointTrials {

    private static final double DIAGONAL = Math.PI / 4;
    private static final Consumer<TrueCove> AS_DECLARED = cove -> { };

    private JointTrials() {
    }

    static List<JointCase> atTheLimit() {
        List<JointCase> cases = new ArrayList<>(fewReadings());
        cases.addAll(worseThanDeclared());
        cases.addAll(scattering());
        cases.addAll(drifting());
        cases.addAll(longerOneWay());
        cases.addAll(roundedDigits());
        cases.addAll(walksOfAnotherKind());
        return cases;
    }

    /** Where the promise does not hold yet: each is wrong more often than it may be. A case that is mended moves up. */
    static List<JointCase> notKeptYet() {
        return List.of(changeNearTheJoint(1, 2, "0.75 m before the joint, in the last two stations of ten"),
                changeNearTheJoint(1, 1, "before the last station of ten"), changeNearTheJoint(1.5, 1, "before the last station of ten"),
                changeNearTheJoint(-1.5, 1, "before the last station of ten"));
    }

    private static JointCase changeNearTheJoint(double steps, int last, String where) {
        double fromM = 5 - 0.5 * last;
        return new JointCase("a change of " + steps + " steps " + where + ", scatter 0.3 step", cove -> cove.scatterSteps = 0.3,
                cove -> cove.reel(0, 5).reel(5, 10).walk(0, 5, 10, atM -> atM < fromM ? -steps : 0, 0).walk(5, 10, 10, atM -> 2, 0));
    }

    private static List<JointCase> worseThanDeclared() {
        List<JointCase> cases = new ArrayList<>();
        for (int readings : new int[] {2, 3, 5}) {
            cases.add(JointCase.twoReels("meter three times as noisy as declared, " + readings + " readings a side at one place", 1, 1,
                    readings, 2, 0, cove -> cove.meterSteps = 0.9));
        }
        cases.add(JointCase.twoReels("meter twice as noisy as declared, three readings a side at one place", 1, 1, 3, 2, DIAGONAL,
                cove -> cove.meterSteps = 0.6));
        return cases;
    }

    /** Sizes at which a drift is hardest to see and does most: one and a half to four standard errors of it, and a plain one. */
    private static List<JointCase> drifting() {
        List<JointCase> cases = new ArrayList<>();
        cases.add(drift(3, 10, 0));
        cases.add(drift(0.7, 10, 0));
        cases.add(drift(0.8, 10, 0.4));
        cases.add(drift(2, 10, 0.4));
        cases.add(drift(0.6, 25, 0.4));
        cases.add(drift(1.2, 5, 0.4));
        cases.add(drift(2, 3, 0.4));
        cases.add(new JointCase("a change of 1 step in the middle of a reel, 10 a side, scatter 0.3 step",
                cove -> cove.scatterSteps = 0.3,
                cove -> cove.reel(0, 5).reel(5, 10).walk(0, 5, 10, atM -> atM < 2.5 ? -1 : 0, 0).walk(5, 10, 10, atM -> 2, 0)));
        return cases;
    }

    private static JointCase drift(double steps, int stations, double scatter) {
        return new JointCase("a reel that drifts by " + steps + " steps up to the joint, " + stations + " a side, scatter " + scatter
                + " step", cove -> cove.scatterSteps = scatter, cove -> cove.reel(0, 5).reel(5, 10)
                .walk(0, 5, stations, atM -> steps / 5 * (atM - 5), 0).walk(5, 10, stations, atM -> 2, 0));
    }

    private static List<JointCase> fewReadings() {
        return List.of(
                JointCase.twoReels("one reading a side, noise as declared", 1, 1, 1, 2, 0, AS_DECLARED),
                JointCase.twoReels("three readings a side at one place", 1, 1, 3, 2, DIAGONAL, AS_DECLARED),
                JointCase.twoReels("eight readings a side at one place", 1, 1, 8, 2, 0, AS_DECLARED),
                JointCase.twoReels("four stations a side, noise as declared", 4, 4, 1, 2, 0, AS_DECLARED),
                JointCase.twoReels("noise of 1.2 steps, one reading a side", 1, 1, 1, 2, 0, cove -> {
                    cove.meterSteps = 1.2;
                    cove.declaredSteps = 1.2;
                }),
                JointCase.twoReels("meter twice as noisy as declared, 8 a side twice read", 8, 8, 2, 2, 0,
                        cove -> cove.meterSteps = 0.6),
                JointCase.twoReels("meter three times as noisy as declared, 2 a side, six times read", 2, 2, 6, 2, 0,
                        cove -> cove.meterSteps = 0.9));
    }

    private static List<JointCase> scattering() {
        List<JointCase> cases = new ArrayList<>();
        for (int k : new int[] {2, 3, 4, 5, 10, 25}) {
            cases.add(JointCase.twoReels(k + " stations a side, scatter 0.4 step", k, k, 1, 2, 0,
                    cove -> cove.scatterSteps = 0.4));
        }
        cases.add(JointCase.twoReels("2 stations against 12, scatter 0.4 step", 2, 12, 1, 2, DIAGONAL,
                cove -> cove.scatterSteps = 0.4));
        cases.add(JointCase.twoReels("1 station against 3, scatter 0.4 step", 1, 3, 1, 2, DIAGONAL,
                cove -> cove.scatterSteps = 0.4));
        cases.add(JointCase.twoReels("10 a side twice read, scatter 0.4 step", 10, 10, 2, 2, Math.PI / 2,
                cove -> cove.scatterSteps = 0.4));
        for (int limit : new int[] {3, 4}) {
            cases.add(JointCase.twoReels("limit of " + limit + " steps, 4 a side, scatter 0.4 step", 4, 4, 1, limit, DIAGONAL,
                    cove -> {
                        cove.limit = limit;
                        cove.scatterSteps = 0.4;
                    }));
        }
        return cases;
    }

    private static List<JointCase> longerOneWay() {
        List<JointCase> cases = new ArrayList<>();
        for (int degrees : new int[] {0, 30, 60, 90}) {
            cases.add(longerAlongU(degrees));
        }
        for (int k : new int[] {3, 4, 5}) {
            cases.add(alongU(k));
        }
        return cases;
    }

    static JointCase longerAlongU(int degrees) {
        return JointCase.twoReels("scatter 0.6 step, three times longer along u', 8 a side, difference at " + degrees
                + " degrees", 8, 8, 1, 2, Math.toRadians(degrees), cove -> scatterAlongU(cove, 0.6, 3));
    }

    private static JointCase alongU(int stations) {
        return JointCase.twoReels("scatter 0.4 step along u' alone, " + stations + " a side, difference along u'", stations,
                stations, 1, 2, 0, cove -> scatterAlongU(cove, 0.4, 1000));
    }

    static void scatterAlongU(TrueCove cove, double steps, double ratio) {
        cove.scatterSteps = steps;
        cove.scatterRatio = ratio;
    }

    private static List<JointCase> roundedDigits() {
        return List.of(
                JointCase.twoReels("x, y to 4 decimals, 6 a side", 6, 6, 1, 2, 0, typedAs(TrueCove.Digits.XY_4)),
                JointCase.twoReels("x, y to 4 decimals, quiet meter, 6 a side", 6, 6, 1, 2, 0,
                        typedAs(TrueCove.Digits.XY_4).andThen(JointTrials::quiet)),
                JointCase.twoReels("CCT to 1 K, Duv to 4 decimals, 6 a side", 6, 6, 1, 2, DIAGONAL,
                        typedAs(TrueCove.Digits.CCT_1_DUV_4)),
                JointCase.twoReels("CCT to 10 K, Duv to 3 decimals, one a side", 1, 1, 1, 2, DIAGONAL,
                        typedAs(TrueCove.Digits.CCT_10_DUV_3)),
                JointCase.twoReels("CCT to 10 K, Duv to 3 decimals, 6 a side", 6, 6, 1, 2, DIAGONAL,
                        typedAs(TrueCove.Digits.CCT_10_DUV_3)),
                JointCase.twoReels("CCT to 10 K, Duv to 3 decimals, quiet meter, 6 a side", 6, 6, 1, 2, Math.PI / 2,
                        typedAs(TrueCove.Digits.CCT_10_DUV_3).andThen(JointTrials::quiet)));
    }

    private static Consumer<TrueCove> typedAs(TrueCove.Digits digits) {
        return cove -> cove.digits = digits;
    }

    private static void quiet(TrueCove cove) {
        cove.meterSteps = 0.05;
        cove.declaredSteps = 0.05;
    }

    private static List<JointCase> walksOfAnotherKind() {
        Consumer<TrueCove> scatter = cove -> cove.scatterSteps = 0.4;
        return List.of(
                JointCase.twoReels("ellipse rule, 5 a side, scatter 0.4 step", 5, 5, 1, 2, DIAGONAL,
                        scatter.andThen(cove -> cove.rule = StepRule.ELLIPSE)),
                JointCase.twoReels("one wild reading before the joint, 8 a side", 8, 8, 1, 2, 0, cove -> { })
                        .with(cove -> cove.wild(2.3, 15)),
                new JointCase("twelve reels in one survey, 4 a side, scatter 0.4 step", scatter, JointTrials::twelveReels),
                new JointCase("a closed cove of two reels, 5 a side, scatter 0.4 step", scatter.andThen(cove -> cove.closed = true),
                        cove -> cove.reel(0, 5).reel(5, 10).walk(0, 5, 5, atM -> 0, 0).walk(5, 10, 5, atM -> 2, 0)));
    }

    private static void twelveReels(TrueCove cove) {
        for (int i = 0; i < 12; i++) {
            double steps = 2 * (i % 2);
            cove.reel(5 * i, 5 * i + 5).walk(5 * i, 5 * i + 5, 4, atM -> steps, 0);
        }
    }
}
