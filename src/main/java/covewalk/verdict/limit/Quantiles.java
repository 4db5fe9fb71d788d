package covewalk.verdict.limit;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/** The normal distribution, and Student's t where the noise was estimated. */
public final class Quantiles {

    /** From this many degrees of freedom on both are the same to four digits. */
    private static final double MANY = 1e4;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private Quantiles() {
    }

    /**
     * The chance of lying up to so many estimated standard deviations above the mean.
     *
     * @param degrees of freedom; fewer than 1 count as 1, infinitely many are the normal distribution
     */
    public static double upTo(double sds, double degrees) {
        return degrees > MANY ? NORMAL.cumulativeProbability(sds) : student(degrees).cumulativeProbability(sds);
    }

    /** So many estimated standard deviations above the mean, this share lies below. */
    public static double of(double share, double degrees) {
        return degrees > MANY ? NORMAL.inverseCumulativeProbability(share)
                : student(degrees).inverseCumulativeProbability(share);
    }

    private static TDistribution student(double degrees) {
        return new TDistribution(null, Math.max(1, degrees));
    }
}
