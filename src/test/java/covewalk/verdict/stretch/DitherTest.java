package covewalk.verdict.stretch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the mean of rounded normal numbers itself, summed over the digits they may be rounded to. */
class DitherTest {

    private static final double UNIFORM = 1 / Math.sqrt(12);

    @ParameterizedTest(name = "noise of {0} of a digit")
    @ValueSource(doubles = {0.15, 0.2, 0.3, 0.4})
    void reckonsNoLessThanTheMeanIsOff(double noise) {
        double farthest = 0;
        for (double truth = 0; truth < 0.5; truth += 0.005) {
            farthest = Math.max(farthest, Math.abs(meanOfRounded(truth, noise) - truth));
        }
        double reckoned = Dither.left(noise, UNIFORM) / 2;

        assertEquals(farthest, reckoned, 0.15 * farthest + 0.005);
        assertEquals(true, reckoned >= farthest || reckoned == 0);
    }

    @ParameterizedTest(name = "noise of {0} of a digit")
    @ValueSource(doubles = {0, 0.01, 0.05})
    void withHardlyAnyNoiseAllOfItStays(double noise) {
        assertEquals(1, Dither.left(noise, UNIFORM), 1e-12);
    }

    private static double meanOfRounded(double truth, double noise) {
        NormalDistribution normal = new NormalDistribution(null, truth, noise);
        double mean = 0;
        for (int digit = -10; digit <= 10; digit++) {
            mean += digit * (normal.cumulativeProbability(digit + 0.5) - normal.cumulativeProbability(digit - 0.5));
        }
        return mean;
    }
}
