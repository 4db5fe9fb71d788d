package covewalk.verdict.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class SlopeTest {

    private static double[] count(int n) {
        return IntStream.range(0, n).asDoubleStream().toArray();
    }

    @ParameterizedTest(name = "{0}, section {1}")
    @CsvFileSource(resources = "nist-series.csv", maxCharsPerColumn = 10_000)
    void countsTheSlopeOfPublishedSeriesInItsStandardDeviations(String name, String section, double t, double tolerance, String values) {
        double[] series = Arrays.stream(values.split(";")).mapToDouble(Double::parseDouble).toArray();

        assertEquals(t, Slope.of(count(series.length), series).t(), tolerance);
    }

    @ParameterizedTest(name = "{0}: t {1}")
    @CsvSource(textBlock = """
        # series of NIST/SEMATECH e-Handbook 1.4.2, t, degrees of freedom, is a drift
        filter transmittance (1.4.2.6),   5.582,  48,  true
        normal random numbers (1.4.2.1), -0.1251, 498, false
        heat-flow meter (1.4.2.8),       -1.96,   193, false
        """)
    void reportsTheDriftsOfPublishedSeries(String name, double t, int degrees, boolean drift) {
        assertEquals(drift, new Slope(t, 1, 1, degrees).exceeds(0.025, 0, 0));
    }

    @ParameterizedTest(name = "{0} values")
    @CsvSource(textBlock = """
        # values, why
        3,  the noise that is known is relied on
        5,  likewise
        6,  Student's t with few degrees of freedom
        40, Student's t with many
        """)
    void callsNoMoreSteadySeriesSlopingThanItsShare(int values, String why) {
        Random random = new Random(values);
        int trials = 4000;
        int sloping = 0;
        for (int i = 0; i < trials; i++) {
            double[] noise = IntStream.range(0, values).mapToDouble(k -> random.nextGaussian()).toArray();
            sloping += Slope.of(count(values), noise).exceeds(0.05, 0, 1) ? 1 : 0;
        }
        double limit = 0.05 + 3 * Math.sqrt(0.05 * 0.95 / trials);
        assertTrue(sloping <= limit * trials, why + ": " + sloping);
        assertTrue(sloping > 0, "a test that never alarms proves nothing");
    }

    @Test
    void takesNoDigitForADrift() {
        double[] oneDigit = {0.260, 0.260, 0.260, 0.260, 0.261, 0.261, 0.261, 0.261};

        assertTrue(Slope.of(count(8), oneDigit).exceeds(0.05, 0, 0));
        assertFalse(Slope.of(count(8), oneDigit).exceeds(0.05, 0.001 * 0.001, 0));
    }
}
