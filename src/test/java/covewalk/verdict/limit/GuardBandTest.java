package covewalk.verdict.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.colour.Covariance;
import covewalk.verdict.Published;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The test against a limit, held against published figures (check-values.csv). Where the limit is many standard
 * deviations long it has to be the test of one quantity against one upper limit that JCGM 106 describes.
 */
class GuardBandTest {

    private static final double FAR = 100;

    private static Confidence at(double overTheLimit, double u) {
        return LimitTest.of(FAR + overTheLimit, Covariance.isotropic(u), FAR);
    }

    @ParameterizedTest(name = "conformance probability {0}")
    @ValueSource(strings = {"0.8", "0.9", "0.95", "0.99", "0.999"})
    void isTheOneSidedNormalTestWhereTheLimitIsFar(String probability) {
        double z = Published.value("jcgm106-z-" + probability);

        assertEquals(Double.parseDouble(probability), at(0.001 * z, 0.001).beyond(), 5e-6);
        assertEquals(Double.parseDouble(probability), at(-0.001 * z, 0.001).within(), 5e-6);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        # figure in check-values.csv, guard band in standard uncertainties
        jcgm106-w1645u, 1.645
        jcgm106-w2u, 2
        """)
    void aGuardBandLeavesThePublishedShareOfFalseAcceptance(String figure, double guard) {
        assertEquals(Published.value(figure), 1 - at(-0.001 * guard, 0.001).within(), 5e-6);
    }

    /** JCGM 106, 7.4: a breakdown voltage 0.07 V inside its limit, u = 0.05 V. */
    @Test
    void theZenerDiodeConforms() {
        assertEquals(Published.value("jcgm106-zener"), at(-0.07, 0.05).within(), 5e-4);
    }

    /** JCGM 106, 8.3.3: the speed from which 100 km/h is exceeded with 99.9 %, u = 2 % of the reading. */
    @Test
    void theSpeedingDriverIsBeyondTheLimit() {
        double speed = Published.value("jcgm106-speed");

        assertEquals(0.999, LimitTest.of(speed, Covariance.isotropic(0.02 * speed), 100).beyond(), 1e-4);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        # figure in check-values.csv, measured, limit
        rice-cdf-1-1, 1, 1
        rice-cdf-1-2, 2, 1
        rice-cdf-3-3, 3, 3
        rayleigh-1, 1, 1e-9
        rayleigh-2, 2, 1e-9
        rayleigh-3, 3, 1e-9
        """)
    void isTheRiceDistributionAndWithoutALimitTheRayleigh(String figure, double measured, double limit) {
        assertEquals(Published.value(figure), LimitTest.of(measured, Covariance.isotropic(1), limit).beyond(), 1e-7);
    }

    @Test
    void halfAndNineteenInTwentyLieInsideTheirCircles() {
        Covariance one = Covariance.isotropic(1);

        assertEquals(0.5, LimitTest.of(Published.value("radius-50"), one, 1e-9).beyond(), 1e-5);
        assertEquals(0.95, LimitTest.of(Published.value("radius-95"), one, 1e-9).beyond(), 1e-7);
        assertEquals(0.95, LimitTest.of(Math.sqrt(Published.value("chi2-2-95")), one, 1e-9).beyond(), 1e-7);
    }

    /** Table G.2 of the GUM, two-sided; one degree of freedom is left out, since no verdict rests on so few. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        # figure in check-values.csv, degrees of freedom, one-sided probability
        t-95-2, 2, 0.975
        t-95-4, 4, 0.975
        t-95-9, 9, 0.975
        t-95.45-10, 10, 0.97725
        t-99-16, 16, 0.995
        """)
    void readsStudentsTWhereTheNoiseIsEstimated(String figure, int degrees, double probability) {
        double normal = new NormalDistribution(null, 0, 1).cumulativeProbability(Published.value(figure));

        assertEquals(probability, LimitTest.widened(new Confidence(normal, 0), degrees).beyond(), 2e-6);
    }
}
