package covewalk.verdict.limit;

import covewalk.colour.Covariance;

/**
 * Tests a measured difference against a limit direction by direction, each like a single number against its limit: by
 * Student's t where the noise was estimated from the readings. From few readings nobody can tell along which direction
 * the noise is larger; here nobody needs to, since in each direction only the noise along it counts.
 *
 * <p>Within: the true difference is shorter than the limit only if it is so in every direction. If it is not, one
 * direction at least is true to its limit or farther, and passes by chance in at most the error rate of cases: this
 * holds exactly, for any noise and any degrees of freedom (an intersection-union test; R. L. Berger, Technometrics 24,
 * 1982, 295; from memory). Beyond: along the measured difference, which noise across it makes longer: by Pythagoras, in
 * the mean. That holds to 0.2 % for any noise from 2 degrees of freedom on (by simulation; docs/verdicts.md).
 */
public final class DirectionTest {

    /** Directions tried all round; between two of them the confidence differs by less than anybody prints. */
    private static final int DIRECTIONS = 36;

    private final double first;
    private final double second;
    private final Spread spread;
    private final Covariance whole;
    private final double limit;

    private DirectionTest(double first, double second, Spread spread, double limit) {
        this.first = first;
        this.second = second;
        this.spread = spread;
        this.whole = spread.whole();
        this.limit = limit;
    }

    /**
     * @param first part of the measured difference, steps
     * @param second the part across it, steps
     * @param limit steps, above 0
     */
    public static Confidence of(double first, double second, Spread spread, double limit) {
        DirectionTest test = new DirectionTest(first, second, spread, limit);
        return new Confidence(test.beyond(), test.within());
    }

    private double beyond() {
        double along = sd(first, second);
        double across = Math.max(along, sd(-second, first));
        double length = Math.hypot(first, second) - spread.rounding().reach(first, second);
        return Quantiles.upTo((length - Math.hypot(limit, across)) / along, spread.degrees(first, second));
    }

    /** The distribution function, which takes its time, is asked once: for the least of both it depends on. */
    private double within() {
        double sds = Double.POSITIVE_INFINITY;
        double degrees = Double.POSITIVE_INFINITY;
        double ahead = Math.atan2(second, first);
        for (int i = 0; i < DIRECTIONS; i++) {
            double angle = ahead + 2 * Math.PI * i / DIRECTIONS;
            double a = Math.cos(angle);
            double b = Math.sin(angle);
            sds = Math.min(sds, (limit - a * first - b * second - spread.rounding().reach(a, b)) / sd(a, b));
            degrees = i > 0 && spread.allEstimated() ? degrees : Math.min(degrees, spread.degrees(a, b));
        }
        return Quantiles.upTo(sds, degrees);
    }

    private double sd(double a, double b) {
        return Math.max(LimitTest.LEAST_SD, whole.alongSd(a, b));
    }
}
