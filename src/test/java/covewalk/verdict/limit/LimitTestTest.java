package covewalk.verdict.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.Covariance;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitTestTest {

    private static final Covariance LONG = new Covariance(0.36, 0.12, 0.09); // about 0.64 and 0.22 steps

    @ParameterizedTest(name = "measured {0}, limit {1}, sd {2}")
    @CsvSource(textBlock = """
        # measured, limit, sd, beyond: Rice distribution function, computed with an independent library
        1, 1, 1, 0.2671202
        2, 1, 1, 0.73098794
        3, 3, 1, 0.43252024
        """)
    void isTheRiceDistributionWhereNoiseIsTheSameAllRound(double measured, double limit, double sd, double beyond) {
        Confidence confidence = LimitTest.of(measured, Covariance.isotropic(sd), limit);

        assertEquals(beyond, confidence.beyond(), 1e-7);
        assertEquals(1 - beyond, confidence.within(), 1e-7);
    }

    @Test
    void givesAwayWhateverTheWorstDirectionTakes() {
        Confidence confidence = LimitTest.of(2.6, LONG, 2);

        assertTrue(confidence.beyond() + confidence.within() < 1);
        assertTrue(confidence.beyond() < LimitTest.of(2.6, Covariance.isotropic(0.22), 2).beyond());
    }

    @Test
    void growsWithTheMeasuredDifference() {
        double last = -1;
        for (double measured = 0; measured < 6; measured += 0.05) {
            double beyond = LimitTest.of(measured, LONG, 2).beyond();
            assertTrue(beyond >= last - 1e-9, "at " + measured + " steps");
            last = beyond;
        }
        assertTrue(last > 0.9999);
    }

    /** Truth: differences just at the limit, in any direction, with noise that is longer one way than the other. */
    @Test
    void isWrongAtMostAtTheErrorRateInEachDirection() {
        Random random = new Random(20261005);
        int trials = 4000;
        for (int degrees = 0; degrees < 180; degrees += 30) {
            int beyond = 0;
            int within = 0;
            for (int i = 0; i < trials; i++) {
                Verdict verdict = LimitTest.of(measuredAtTheLimit(degrees, random), LONG, 2).at(0.05);
                beyond += verdict == Verdict.BEYOND ? 1 : 0;
                within += verdict == Verdict.WITHIN ? 1 : 0;
            }
            double allowed = 0.05 + 3 * Math.sqrt(0.05 * 0.95 / trials); // three standard errors of the simulation
            assertTrue((double) beyond / trials <= allowed, "beyond at " + degrees + " degrees: " + beyond);
            assertTrue((double) within / trials <= allowed, "within at " + degrees + " degrees: " + within);
        }
    }

    private static double measuredAtTheLimit(int degrees, Random random) {
        double a = random.nextGaussian();
        double b = random.nextGaussian();
        double first = Math.sqrt(LONG.uu()) * a; // Cholesky factor of LONG
        double second = LONG.uv() / Math.sqrt(LONG.uu()) * a
                + Math.sqrt(LONG.vv() - LONG.uv() * LONG.uv() / LONG.uu()) * b;
        double angle = Math.toRadians(degrees);
        return Math.hypot(2 * Math.cos(angle) + first, 2 * Math.sin(angle) + second);
    }

    @Test
    void asksForMoreWhereTheNoiseWasEstimatedFromFew() {
        Confidence normal = new Confidence(0.975, 0.025);

        // Student's t with 4 degrees of freedom at the normal quantile of 0.975: scipy 1.17.1, t.cdf(norm.ppf(.975), 4)
        assertEquals(0.93922017, LimitTest.widened(normal, 4).beyond(), 1e-8);
        assertEquals(0.975, LimitTest.widened(normal, Double.POSITIVE_INFINITY).beyond());
    }

    @Test
    void survivesNoNoiseAtAll() {
        assertEquals(Verdict.BEYOND, LimitTest.of(2.1, Covariance.ZERO, 2).at(0.05));
        assertEquals(Verdict.WITHIN, LimitTest.of(0, Covariance.ZERO, 2).at(0.05));
    }
}
