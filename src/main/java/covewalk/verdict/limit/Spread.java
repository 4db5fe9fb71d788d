package covewalk.verdict.limit;

import covewalk.colour.Covariance;

/**
 * How far a measured difference may lie off the true one, in the plane where one step is a circle, steps squared.
 *
 * @param estimated what was estimated from the readings themselves
 * @param degrees of freedom of that estimate, 1 or more; infinite where nothing was estimated
 * @param known what is known without them
 * @param rounding what coarse digits may hide
 */
public record Spread(Covariance estimated, double degrees, Covariance known, Rounding rounding) {

    Covariance whole() {
        return estimated.plus(known);
    }

    /** Whether all of it was estimated, so that its degrees of freedom are the same in every direction. */
    boolean allEstimated() {
        return known.uu() + known.vv() == 0;
    }

    /** Of the whole along a direction: more, as far as known parts make it up (Welch-Satterthwaite, GUM G.4.1). */
    public double degrees(double first, double second) {
        double part = estimated.alongSd(first, second) / whole().alongSd(first, second);
        return part > 0 ? degrees / Math.pow(part, 4) : Double.POSITIVE_INFINITY;
    }
}
