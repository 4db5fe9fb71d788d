package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.survey.SetUp;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A first look at the scatter between stations, from the median of the differences of successive ones: a few steps,
 * drifts and wild readings leave it as it is. Good for finding changes, which then allow a better estimate.
 */
final class RoughNoise {

    /** Fewer differences than this say nothing of their scatter. */
    private static final int FEWEST = 5;

    /** The median of chi-square with two degrees of freedom, 2 ln 2. */
    private static final double MEDIAN_OF_CHI_SQUARE = 2 * Math.log(2);

    /** A median is worth some two fifths of the differences it is taken of (its efficiency, 0.37 to 0.48; from memory). */
    private static final double WORTH_OF_A_MEDIAN = 0.4;

    private RoughNoise() {
    }

    static Noise of(List<PlacementRow> rows, SetUp setUp) {
        List<Double> squares = new ArrayList<>();
        double expected = 0;
        for (PlacementRow row : rows) {
            for (int i = 1; i < row.stations().size(); i++) {
                Station one = row.stations().get(i - 1);
                Station other = row.stations().get(i);
                double du = other.mean().u() - one.mean().u();
                double dv = other.mean().v() - one.mean().v();
                squares.add(du * du + dv * dv);
                expected += declared(one, setUp) + declared(other, setUp);
            }
        }
        Covariance repeatability = Covariance.isotropic(setUp.repeatabilityUv());
        if (squares.size() < FEWEST) {
            return new Noise(repeatability, Covariance.ZERO, Double.POSITIVE_INFINITY);
        }
        double found = median(squares) / MEDIAN_OF_CHI_SQUARE;
        double excess = Math.max(0, (found - expected / squares.size()) / 2);
        return new Noise(repeatability, Covariance.isotropic(Math.sqrt(excess)),
                excess > 0 ? 2 * WORTH_OF_A_MEDIAN * squares.size() : Double.POSITIVE_INFINITY);
    }

    private static double declared(Station station, SetUp setUp) {
        double digits = (station.digits().uu() + station.digits().vv()) / 2;
        return (setUp.repeatabilityUv() * setUp.repeatabilityUv() + digits) / station.readings().size();
    }

    private static double median(List<Double> values) {
        double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
