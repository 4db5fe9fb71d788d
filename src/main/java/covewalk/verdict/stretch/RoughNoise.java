package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;

/**
 * A first look at the scatter between stations, from medians of the differences of successive ones: a few steps,
 * drifts and wild readings leave it as it is. Good for finding changes, which then allow a better estimate.
 */
final class RoughNoise {

    /** Fewer differences than this say nothing of their scatter. */
    private static final int FEWEST = 5;

    /**
     * Scatter along a sound reel that is reckoned with where too few were read to see it: half a step (common
     * practice, no source). It keeps two readings of one reel from being taken for a change; joints do not rest on it.
     */
    private static final Covariance USUAL = Covariance.isotropic(UvPrime.STEP / 2);

    /** The median of the absolute value of a normal number of standard deviation 1. */
    private static final double MEDIAN_OF_A_NORMAL = 0.674490;

    /** A standard deviation from a median is worth this share of the numbers it is taken of (its efficiency, 0.37). */
    private static final double WORTH_OF_A_MEDIAN = 0.37;

    private final double[] du;
    private final double[] dv;
    private final CovarianceSum expected = new CovarianceSum();
    private int differences;

    private RoughNoise(int most) {
        this.du = new double[most];
        this.dv = new double[most];
    }

    static Noise of(List<PlacementRow> rows, Repeatability repeatability) {
        RoughNoise rough = new RoughNoise(rows.stream().mapToInt(row -> row.stations().size()).sum());
        for (PlacementRow row : rows) {
            for (int i = 1; i < row.stations().size(); i++) {
                rough.add(row.stations().get(i - 1), row.stations().get(i), repeatability);
            }
        }
        return rough.noise(repeatability);
    }

    private void add(Station one, Station other, Repeatability repeatability) {
        du[differences] = other.mean().u() - one.mean().u();
        dv[differences] = other.mean().v() - one.mean().v();
        differences++;
        expect(one, repeatability);
        expect(other, repeatability);
    }

    private void expect(Station station, Repeatability repeatability) {
        Covariance one = repeatability.measured() ? repeatability.covariance()
                : repeatability.covariance().plus(station.digits());
        expected.add(one, 1.0 / station.readings().size());
    }

    private Noise noise(Repeatability repeatability) {
        if (differences < FEWEST) {
            return new Noise(repeatability, USUAL, Noise.Found.NOTHING);
        }
        Covariance excess = Excess.over(found(), expected.times(1.0 / differences)).times(0.5);
        return new Noise(repeatability, excess, excess.uu() + excess.vv() > 0
                ? new Noise.Found(Covariance.ZERO, 1, WORTH_OF_A_MEDIAN * differences) : Noise.Found.NOTHING);
    }

    /** Variances from medians; the covariance from those of the sum and the difference, which it sets apart. */
    private Covariance found() {
        double uu = variance(1, 0);
        double vv = variance(0, 1);
        double most = Math.sqrt(uu * vv);
        double uv = (variance(1, 1) - variance(1, -1)) / 4;
        return new Covariance(uu, Math.max(-most, Math.min(most, uv)), vv);
    }

    private double variance(double u, double v) {
        double[] sizes = new double[differences];
        for (int i = 0; i < differences; i++) {
            sizes[i] = Math.abs(u * du[i] + v * dv[i]);
        }
        double sd = StatUtils.percentile(sizes, 50) / MEDIAN_OF_A_NORMAL;
        return sd * sd;
    }
}
