package covewalk.verdict.plan;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.SetUp;
import covewalk.verdict.stretch.Noise;
import covewalk.verdict.stretch.Stretch;
import java.util.List;
import java.util.Optional;

/**
 * The noise a walk will meet, in u' and v' each.
 *
 * @param readingUv of one reading at a place: repeatability, and the digits where the former does not hold them
 * @param scatterUv from place to place along a reel
 * @param scatterMeasured whether readings of this survey told the scatter
 */
public record ExpectedNoise(double readingUv, double scatterUv, boolean scatterMeasured) {

    /** Usual scatter along a reel, steps, until readings tell (common practice, no source). */
    public static final double USUAL_SCATTER_STEPS = 0.5;

    /** x, y typed to four decimals leave at most this open in u' or v': 0.0001 / sqrt 12, times 0.8 at 2700 K (computed). */
    private static final double DIGITS_UV = 0.000023;

    /** From the set-up, and from stretches that were read with it as far as there are. */
    static ExpectedNoise of(SetUp setUp, List<Stretch> stretches) {
        Optional<Noise> measured = stretches.stream().filter(stretch -> stretch.setUp().equals(setUp.id())).map(Stretch::noise)
                .filter(noise -> Double.isFinite(noise.degrees())).findFirst();
        double repeatability = measured.filter(noise -> noise.repeatability().measured())
                .map(noise -> rms(noise.repeatability().covariance())).orElse(setUp.repeatabilityUv());
        return new ExpectedNoise(Math.hypot(repeatability, DIGITS_UV),
                measured.map(noise -> rms(noise.scatter())).orElse(USUAL_SCATTER_STEPS * UvPrime.STEP), measured.isPresent());
    }

    private static double rms(Covariance covariance) {
        return Math.sqrt((covariance.uu() + covariance.vv()) / 2);
    }

    /** Variance of the mean of a station. */
    double ofStation(int readings) {
        return readingUv * readingUv / readings + scatterUv * scatterUv;
    }
}
