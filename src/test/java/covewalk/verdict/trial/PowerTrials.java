package covewalk.verdict.trial;

import java.util.ArrayList;
import java.util.List;

/** How often a true difference is found, against the best that any test of the same error rate can do. */
final class PowerTrials {

    private static final double LIMIT = 2;

    /**
     * @param sd of the difference, steps
     * @param truth true difference, steps
     * @param best share of such joints called rightly by the best test with known noise and the whole error rate
     * @param found share that is called rightly
     */
    record Point(double sd, double truth, double best, double found) {
    }

    private PowerTrials() {
    }

    /** True differences on both sides of the limit: from 0 steps up to twice the limit. */
    static List<Point> curve(double sd, double every, int trials) {
        List<Point> points = new ArrayList<>();
        int count = (int) Math.round(2 * LIMIT / every);
        for (int i = 0; i <= count; i++) {
            double truth = Math.max(0.01, i * every);
            Shares shares = one(sd, truth).shares(trials);
            points.add(new Point(sd, truth, best(sd, truth),
                    truth < LIMIT ? shares.withinShare() : shares.beyondShare()));
        }
        return points;
    }

    private static JointCase one(double sd, double truth) {
        return JointCase.twoReels("difference of " + truth, 1, 1, 1, truth, 1, cove -> {
            cove.meterSteps = sd / Math.sqrt(2);
            cove.declaredSteps = sd / Math.sqrt(2);
        });
    }

    private static double best(double sd, double truth) {
        return truth < LIMIT ? Rice.upTo(Rice.quantile(0.05, LIMIT, sd), truth, sd)
                : 1 - Rice.upTo(Rice.quantile(0.95, LIMIT, sd), truth, sd);
    }
}
