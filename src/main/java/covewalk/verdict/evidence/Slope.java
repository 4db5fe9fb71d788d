package covewalk.verdict.evidence;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * The straight line through values over time, by least squares, and whether it slopes more than chance makes it.
 *
 * @param perUnit change of the value per unit of time
 * @param spread sum of squares of the times about their mean
 * @param residual variance of the values about the line; 0 for two values
 * @param degrees values less two
 */
record Slope(double perUnit, double spread, double residual, int degrees) {

    /** Fewer degrees of freedom estimate a noise too badly: then the known one is relied on (common practice, no source). */
    private static final int ENOUGH = 4;

    /** @param at times, not all alike; two or more, as many as {@code values} */
    static Slope of(double[] at, double[] values) {
        double centre = mean(at);
        double middle = mean(values);
        double spread = 0;
        double product = 0;
        for (int i = 0; i < at.length; i++) {
            spread += (at[i] - centre) * (at[i] - centre);
            product += (at[i] - centre) * (values[i] - middle);
        }
        double slope = product / spread;
        double squares = 0;
        for (int i = 0; i < at.length; i++) {
            double off = values[i] - middle - slope * (at[i] - centre);
            squares += off * off;
        }
        int degrees = at.length - 2;
        return new Slope(slope, spread, degrees > 0 ? squares / degrees : 0, degrees);
    }

    /** The slope counted in its own standard deviations, as the values scatter about the line. */
    double t() {
        return perUnit / Math.sqrt(residual / spread);
    }

    /** Variance of the slope; the noise of a value is at least what its digits leave open. */
    double variance(double digits, double repeatability) {
        double least = estimated() ? digits : digits + repeatability;
        return Math.max(residual, least) / spread;
    }

    /**
     * Whether chance makes it slope so much, either way, in at most this share of cases: Student's t where the noise
     * was estimated from enough values, else the normal distribution with the noise that is known.
     *
     * @param digits variance of a value that its digits leave open
     * @param repeatability variance of a value that is known beforehand
     */
    boolean exceeds(double share, double digits, double repeatability) {
        double variance = variance(digits, repeatability);
        if (!(variance > 0)) {
            return perUnit != 0;
        }
        double sds = Math.abs(perUnit) / Math.sqrt(variance);
        double sure = 1 - share / 2;
        return sds > (estimated() ? new TDistribution(null, degrees).inverseCumulativeProbability(sure)
                : new NormalDistribution(null, 0, 1).inverseCumulativeProbability(sure));
    }

    private boolean estimated() {
        return degrees >= ENOUGH;
    }

    private static double mean(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum / numbers.length;
    }
}
