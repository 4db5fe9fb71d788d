package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.survey.SetUp;
import java.util.Collection;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * What reading again at one place varies by, for one reading of one set-up.
 *
 * @param covariance that verdicts reckon with, in u', v'; where it was measured, the rounding of the digits is in it already
 * @param measured whether it was taken from the readings, and not from the survey's description
 * @param declaredUv standard deviation of u' and v' each as the survey declares it
 * @param repeats what the readings say, whether it is reckoned with or not
 * @param against how that stands against the declared value
 */
public record Repeatability(Covariance covariance, boolean measured, double declaredUv, Repeats repeats,
                            Against against) {

    /**
     * Fewer repeats than this estimate a repeatability no better than its maker does (common practice, no source). They
     * are used where they show a larger one.
     */
    public static final int ENOUGH = 10;

    private static final double LONGER_TAILS = 0.5;

    /** The share of meters as good as declared that are called otherwise, each way. */
    private static final double CHANCE = 0.01;

    /** What the repeats say of the declared value. */
    public enum Against { NOTHING_REPEATED, AS_DECLARED, NOISIER, QUIETER }

    public static Repeatability declared(SetUp setUp) {
        return new Repeatability(Covariance.isotropic(setUp.repeatabilityUv()), false, setUp.repeatabilityUv(), Repeats.NONE,
                Against.NOTHING_REPEATED);
    }

    /** Pooled over all stations of the set-up that were read more than once. */
    public static Repeatability of(Collection<Station> stations, SetUp setUp) {
        return of(Repeats.of(stations), setUp);
    }

    /** The same over rows of one set-up, on all processors; added up in their order, so that the sum is the same on every computer. */
    static Repeatability over(List<PlacementRow> rows, SetUp setUp) {
        return of(rows.parallelStream().map(row -> Repeats.of(row.stations())).toList().stream()
                .reduce(Repeats.NONE, Repeats::plus), setUp);
    }

    private static Repeatability of(Repeats repeats, SetUp setUp) {
        if (repeats.count() == 0) {
            return declared(setUp);
        }
        double declared = setUp.repeatabilityUv();
        double expected = repeats.count() * 2 * declared * declared + repeats.digits();
        Against against = against(repeats.squares(), expected, repeats.count());
        boolean measured = repeats.count() >= ENOUGH || repeats.squares() > expected;
        return new Repeatability(measured ? covariance(repeats) : Covariance.isotropic(declared), measured, declared, repeats,
                against);
    }

    /** A meter is declared to vary alike in u' and in v': few repeats are pooled over both. */
    private static Covariance covariance(Repeats repeats) {
        return repeats.count() < ENOUGH ? Covariance.isotropic(repeats.uv()) : repeats.covariance();
    }

    /**
     * What the repeats alone show of a single reading, with two degrees of freedom each where both are pooled; a little
     * less, since a length in a plane has longer tails than a number on a line (computed for limits down to half the noise).
     */
    Noise.Found found() {
        return repeats.count() == 0 ? Noise.Found.NOTHING : new Noise.Found(covariance(repeats), 1,
                repeats.count() < ENOUGH ? 2 * repeats.count() - LONGER_TAILS : repeats.count());
    }

    /** What a reading varies by at least, as far as anybody knows: as declared, or less where repeats vary less. */
    double sureUv() {
        return repeats.count() == 0 ? declaredUv : Math.min(declaredUv, repeats.uv());
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
}
