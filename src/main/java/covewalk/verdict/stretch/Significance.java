package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import org.apache.commons.math3.distribution.FDistribution;

/** How large a difference is against its noise. */
final class Significance {

    private Significance() {
    }

    /** The squared length of a difference counted in its own standard deviations (Mahalanobis). */
    static double of(double du, double dv, Covariance c) {
        double determinant = c.uu() * c.vv() - c.uv() * c.uv();
        if (!(determinant > 0)) {
            return du == 0 && dv == 0 ? 0 : Double.POSITIVE_INFINITY;
        }
        return (du * du * c.vv() - 2 * du * dv * c.uv() + dv * dv * c.uu()) / determinant;
    }

    /**
     * What {@link #of} exceeds by chance in this share of cases: chi-square with two degrees of freedom for known
     * noise, twice Fisher's F where the noise was estimated.
     */
    static double exceededIn(double share, double degrees) {
        if (degrees > 1e4) {
            return -2 * Math.log(share);
        }
        return 2 * new FDistribution(null, 2, Math.max(2, degrees)).inverseCumulativeProbability(1 - share);
    }
}
