package covewalk.verdict.limit;

import covewalk.colour.Covariance;

/**
 * Tests a measured difference against a limit, in the plane where one step is a circle of radius 1.
 *
 * <p>For a direction t let F(t) be the chance that a measured difference comes out shorter than the one measured if
 * the true one has the length of the limit in direction t. The confidence in "beyond" is the least F over all
 * directions, that in "within" is one less the greatest. So whichever way the true difference points, a verdict given
 * at 1 - errorRate is wrong at most in that share of cases. Where the noise is the same in all directions, F is the
 * Rice distribution function and the two add to one.
 */
public final class LimitTest {

    /** Directions tried over a quarter turn before the best is refined; by symmetry a quarter holds them all. */
    private static final int DIRECTIONS = 9;

    /** Below this ratio of the axes' standard deviations from 1 the direction makes no difference worth a sum. */
    private static final double ROUND = 1e-6;

    /** Nearer than this to 0 or 1 along both axes, no direction between them makes a difference to anybody. */
    private static final double PLAIN = 1e-7;

    /** The smallest standard deviation that is summed with, in steps: digits are finite, so none is truly 0. */
    static final double LEAST_SD = 1e-6;

    private static final double LAST_BELOW_1 = Math.nextDown(1.0);

    private LimitTest() {
    }

    /**
     * @param length of the measured difference, steps
     * @param covariance of the measured difference, steps squared
     * @param limit steps, above 0
     */
    public static Confidence of(double length, Covariance covariance, double limit) {
        double sd1 = Math.max(LEAST_SD, covariance.eigen().larger());
        double sd2 = Math.max(sd1 / 100, covariance.eigen().smaller());
        if (sd1 / sd2 < 1 + ROUND) {
            double f = DiscProbability.of(limit, 0, sd1, sd1, length);
            return new Confidence(f, 1 - f);
        }
        double along = inDirection(0, sd1, sd2, length, limit);
        double across = inDirection(Math.PI / 2, sd1, sd2, length, limit);
        double least = Math.min(along, across);
        double greatest = Math.max(along, across);
        boolean plain = greatest < PLAIN || least > 1 - PLAIN;
        for (int i = 1; i < DIRECTIONS - 1 && !plain; i++) {
            double f = inDirection(i * Math.PI / 2 / (DIRECTIONS - 1), sd1, sd2, length, limit);
            least = Math.min(least, f);
            greatest = Math.max(greatest, f);
        }
        return new Confidence(least, 1 - greatest);
    }

    private static double inDirection(double angle, double sd1, double sd2, double length, double limit) {
        return DiscProbability.of(limit * Math.cos(angle), limit * Math.sin(angle), sd1, sd2, length);
    }

    /**
     * The same confidence where part of the noise was estimated from few readings: what a normal distribution gives
     * is read off Student's t instead, which keeps the error rate where the limit is many standard deviations long
     * and the difference is therefore judged along one line.
     *
     * @param degrees of freedom of the noise; infinite where it was declared
     */
    public static Confidence widened(Confidence normal, double degrees) {
        return new Confidence(widened(normal.beyond(), degrees), widened(normal.within(), degrees));
    }

    /** A chance that a double cannot tell from 1 counts as the last one that it can: Student's t may tell it well. */
    private static double widened(double normal, double degrees) {
        return normal <= 0 || Double.isInfinite(degrees) ? normal
                : Quantiles.upTo(Quantiles.of(Math.min(normal, LAST_BELOW_1), Double.POSITIVE_INFINITY), degrees);
    }
}
