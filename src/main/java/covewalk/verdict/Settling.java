package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.verdict.limit.RoundShares;
import covewalk.verdict.limit.Verdict;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How many more readings a side would settle a verdict in nine cases of ten, if the difference is as it seems. Counted
 * along the line of the difference, with the share of the error rate that the next round may spend.
 */
final class Settling {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /** The chance with which the readings asked for settle it. */
    private static final double CHANCE = 0.9;

    private Settling() {
    }

    /** @param errorRate that this place may have by itself, each way */
    static Settle of(Comparison comparison, Verdict verdict, double limitSteps, double errorRate,
                     Settle.WhyNot staying) {
        if (verdict != Verdict.UNSETTLED) {
            return Settle.SETTLED;
        }
        double away = Math.abs(comparison.difference().steps() - limitSteps);
        double wanted = away / sdsWanted(errorRate, comparison.rounds() + 1, comparison.degrees());
        for (int more = 1; more <= Settle.MOST; more++) {
            if (Math.sqrt(varianceWith(comparison, more)) <= wanted) {
                return Settle.after(more);
            }
        }
        boolean hopeless = Math.sqrt(comparison.along(comparison.staying())) > wanted;
        return Settle.never(hopeless ? reason(comparison, staying) : Settle.WhyNot.NEAR_THE_LIMIT);
    }

    /** Standard deviations that must lie between the difference and the limit. */
    private static double sdsWanted(double errorRate, int round, double degrees) {
        double sure = 1 - errorRate * RoundShares.of(round);
        double quantile = degrees > 1e4 ? NORMAL.inverseCumulativeProbability(sure)
                : new TDistribution(null, Math.max(1, degrees)).inverseCumulativeProbability(sure);
        return quantile + NORMAL.inverseCumulativeProbability(CHANCE);
    }

    private static double varianceWith(Comparison comparison, int more) {
        return shrunk(comparison, comparison.from(), more) + shrunk(comparison, comparison.to(), more)
                + comparison.along(comparison.staying());
    }

    /** Readings carry information as the inverse of their variance. */
    private static double shrunk(Comparison comparison, Side side, int more) {
        double now = comparison.along(side.shrinking());
        double one = comparison.along(side.oneMore());
        return now > 0 && one > 0 ? 1 / (1 / now + more / one) : now;
    }

    private static Settle.WhyNot reason(Comparison comparison, Settle.WhyNot staying) {
        Covariance digits = comparison.from().common().plus(comparison.to().common());
        return comparison.along(digits) > comparison.along(comparison.unlike()) ? Settle.WhyNot.COARSE_DIGITS : staying;
    }
}
