package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.Reading;
import covewalk.survey.SetUp;
import java.util.Collection;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * What reading again at one place varies by, for one reading of one set-up.
 *
 * @param covariance in u', v'; where it was measured, the rounding of the digits is in it already
 * @param degrees readings less stations that it was pooled over (GUM H.5 pools daily readings alike); infinite where
 *     the declared value is used
 * @param measuredUv pooled standard deviation of u' and v' each, whether it is used or not; NaN where nothing was
 *     repeated
 * @param repeats readings less stations, whether enough or not
 * @param against how the measured value stands against the declared one
 */
public record Repeatability(Covariance covariance, double degrees, double measuredUv, int repeats, Against against) {

    /** Fewer repeats than this estimate a repeatability no better than its maker does (common practice, no source). */
    public static final int ENOUGH = 10;

    /** The share of meters as good as declared that are called otherwise, each way. */
    private static final double CHANCE = 0.01;

    /** What the repeats say of the declared value. */
    public enum Against { NOTHING_REPEATED, AS_DECLARED, NOISIER, QUIETER }

    public static Repeatability declared(SetUp setUp) {
        return new Repeatability(Covariance.isotropic(setUp.repeatabilityUv()), Double.POSITIVE_INFINITY, Double.NaN, 0,
                Against.NOTHING_REPEATED);
    }

    /** Pooled over all stations of the set-up that were read more than once. */
    public static Repeatability of(Collection<Station> stations, SetUp setUp) {
        double uu = 0;
        double uv = 0;
        double vv = 0;
        int degrees = 0;
        double expected = 0;
        for (Station station : stations) {
            int repeats = station.readings().size() - 1;
            if (repeats > 0) {
                for (Reading reading : station.readings()) {
                    UvPrime colour = station.colours().of(reading);
                    double du = colour.u() - station.mean().u();
                    double dv = colour.v() - station.mean().v();
                    uu += du * du;
                    uv += du * dv;
                    vv += dv * dv;
                }
                degrees += repeats;
                expected += repeats * (2 * square(setUp.repeatabilityUv()) + station.digits().uu() + station.digits().vv());
            }
        }
        if (degrees == 0) {
            return declared(setUp);
        }
        Against against = against(uu + vv, expected, degrees);
        double sd = Math.sqrt((uu + vv) / (2 * degrees));
        return degrees < ENOUGH
                ? new Repeatability(declared(setUp).covariance(), Double.POSITIVE_INFINITY, sd, degrees, against)
                : new Repeatability(new Covariance(uu / degrees, uv / degrees, vv / degrees), degrees, sd, degrees, against);
    }

    /** Whether it was taken from the readings, and not from the survey's description. */
    public boolean measured() {
        return Double.isFinite(degrees);
    }

    /** The sum of squares over its expectation is chi-square over its degrees of freedom, two for each repeat. */
    private static Against against(double squares, double expected, int degrees) {
        if (!(expected > 0)) {
            return squares > 0 ? Against.NOISIER : Against.AS_DECLARED;
        }
        double exceeded = new ChiSquaredDistribution(null, 2.0 * degrees)
                .cumulativeProbability(2 * degrees * squares / expected);
        return exceeded > 1 - CHANCE ? Against.NOISIER : exceeded < CHANCE ? Against.QUIETER : Against.AS_DECLARED;
    }

    private static double square(double x) {
        return x * x;
    }
}
