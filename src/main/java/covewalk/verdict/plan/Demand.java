package covewalk.verdict.plan;

import covewalk.colour.Covariance;
import covewalk.survey.Limits;
import covewalk.verdict.limit.LimitTest;
import covewalk.verdict.limit.RoundShares;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoublePredicate;

/** How well a difference has to be known for a verdict on it; summed in the plane, with noise alike in all directions. */
final class Demand {

    /**
     * The chance aimed at, so that nine cases of ten remain once chance has shown changes inside reels and noise has been
     * estimated from few stations (by simulation).
     */
    private static final double CHANCE = 0.92;

    /** Halvings of an interval: finer than anybody reads. */
    private static final int HALVINGS = 30;

    private static final double LARGEST_SD = 20;
    private static final double FARTHEST = 100;

    private final double limit;
    private final double rate;
    private final double degrees;
    private final double sdWanted;
    private final Map<Double, Double> settled = new HashMap<>();

    /**
     * @param joints of the survey, among which an error rate for all of it is shared (Holm's first and hardest step)
     * @param degrees of freedom with which the walk will have measured its noise; infinite where it relies on declared
     */
    Demand(Limits limits, int joints, double degrees) {
        double all = limits.errorPer() == Limits.ErrorPer.SURVEY ? limits.errorRate() / 2 / Math.max(1, joints) : limits.errorRate();
        this.rate = all * RoundShares.of(1);
        this.limit = limits.neighbourSteps();
        this.degrees = degrees;
        this.sdWanted = last(LARGEST_SD, sd -> settles(sd, WalkPlan.OFF_THE_LIMIT_STEPS));
    }

    /** The largest standard uncertainty, steps, with which a difference one step off the limit is settled. */
    double sdWanted() {
        return sdWanted;
    }

    /** How far off the limit a difference is settled, steps, at a standard uncertainty in steps. */
    double settles(double sd) {
        return settled.computeIfAbsent(sd, one -> last(FARTHEST, off -> !settles(one, off)));
    }

    private boolean settles(double sd, double off) {
        double shortestBeyond = last(limit + FARTHEST, length -> LimitTest.widened(
                LimitTest.of(length, Covariance.isotropic(sd), limit), degrees).beyond() < 1 - rate);
        return 1 - shorter(shortestBeyond, limit + off, sd) >= CHANCE && (off >= limit || settlesWithin(sd, limit - off));
    }

    private boolean settlesWithin(double sd, double steps) {
        double longestWithin = last(limit, length -> LimitTest.widened(
                LimitTest.of(length, Covariance.isotropic(sd), limit), degrees).within() >= 1 - rate);
        return shorter(longestWithin, steps, sd) >= CHANCE;
    }

    /** The chance that a true difference is measured shorter than this. */
    private static double shorter(double length, double truth, double sd) {
        return LimitTest.of(length, Covariance.isotropic(sd), truth).beyond();
    }

    /** The last number from 0 up for which something holds that ceases to hold somewhere. */
    private static double last(double upTo, DoublePredicate holds) {
        double low = 0;
        double high = upTo;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (holds.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
