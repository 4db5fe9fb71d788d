package covewalk.verdict.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.Covariance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Steps; a limit of 200 standard deviations, so that the difference is judged along one line, where tables exist. */
class DirectionTestTest {

    private static final double LIMIT = 200;

    private static Confidence at(double length, double degrees, Covariance estimated, Covariance known) {
        return DirectionTest.of(length, 0, new Spread(estimated, degrees, known, Rounding.NONE), LIMIT);
    }

    @ParameterizedTest(name = "{1} degrees")
    @CsvSource(textBlock = """
        # quantile, degrees: of 0.95, from the NIST/SEMATECH e-Handbook's table 1.3.6.7.2 of Student's t (from memory)
        2.920, 2
        2.132, 4
        1.860, 8
        1.734, 18
        """)
    void isStudentsTestAlongOneLine(double quantile, double degrees) {
        Covariance one = Covariance.isotropic(1);

        assertEquals(0.95, at(LIMIT - quantile, degrees, one, Covariance.ZERO).within(), 2e-4);
        assertEquals(0.95, at(LIMIT + quantile, degrees, one, Covariance.ZERO).beyond(), 1e-3);
    }

    /** What is not estimated has no degrees of freedom to lack: half of the variance known, four times as many (GUM G.4.1). */
    @Test
    void knownPartsAddDegreesOfFreedom() {
        Covariance half = Covariance.isotropic(Math.sqrt(0.5));

        assertEquals(0.95, at(LIMIT - 1.860, 2, half, half).within(), 2e-4);
    }

    /** With a limit of 1.6 standard deviations some direction always leaves less than the 1.645 that 95 % ask for. */
    @Test
    void nothingIsWithinALimitShorterThanTheNoise() {
        Spread spread = new Spread(Covariance.isotropic(1), Double.POSITIVE_INFINITY, Covariance.ZERO, Rounding.NONE);

        assertTrue(DirectionTest.of(0, 0, spread, 1.6).within() < 0.95);
    }

    /** A digit of width w, along the difference alone, lies off by w / 2 at most: root 3 standard deviations; root 2 is to spare. */
    @Test
    void coarseDigitsAreTakenOffAlongTheirOwnDirection() {
        double sd = 0.5;
        Rounding rounding = new Rounding(new Covariance(sd * sd, 0, 0), Covariance.ZERO);
        Spread along = new Spread(Covariance.isotropic(1), Double.POSITIVE_INFINITY, Covariance.ZERO, rounding);

        assertTrue(rounding.reach(1, 0) >= Math.sqrt(3) * sd);
        assertEquals(0, rounding.reach(0, 1), 1e-12);
        assertEquals(0.95, DirectionTest.of(LIMIT - 1.645 - rounding.reach(1, 0), 0, along, LIMIT).within(), 1e-3);
        assertEquals(0.95, DirectionTest.of(0, LIMIT - 1.645, along, LIMIT).within(), 1e-3);
    }
}
