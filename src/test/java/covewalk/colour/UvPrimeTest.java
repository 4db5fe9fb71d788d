package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UvPrimeTest {

    @ParameterizedTest(name = "{5}")
    @CsvSource(textBlock = """
            # u1,   v1,     u2,     v2,     steps, why
            0.2600, 0.5300, 0.2600, 0.5300, 0,     no distance from itself
            0.2600, 0.5300, 0.2611, 0.5300, 1,     the radius of one step along u'
            0.2600, 0.5300, 0.2600, 0.5289, 1,     and along v'
            0.2600, 0.5300, 0.2633, 0.5344, 5,     a 3-4-5 triangle
            0.2600, 0.5300, 0.2666, 0.5300, 6,     two products three steps to either side of their centre
            """)
    void countsStepsOnTheUniformPlane(double u1, double v1, double u2, double v2, double steps, String why) {
        UvPrime a = new UvPrime(u1, v1);
        UvPrime b = new UvPrime(u2, v2);
        assertEquals(steps, a.stepsTo(b), 1e-9);
        assertEquals(a.stepsTo(b), b.stepsTo(a), 0);
    }

    @ParameterizedTest(name = "{0} K to {1} K")
    @CsvSource(textBlock = """
            # from, to,   steps, tolerance: length along the locus by Krystek's approximation, as published figures are checked
            3000,   3030, 1.1,   0.05
            3000,   3050, 1.83,  0.05
            3000,   3200, 7.0,   0.15
            2580,   2870, 12.6,  0.2
            """)
    void spansTheStepsThatKelvinAreWorth(double fromK, double toK, double steps, double tolerance) {
        assertEquals(steps, new CctDuv(fromK, 0).toUvPrime().stepsTo(new CctDuv(toK, 0).toUvPrime()), tolerance);
    }

    @Test
    void movesByADifference() {
        UvPrime moved = new UvPrime(0.26, 0.53).plus(0.0021, -0.0031);
        assertEquals(0.2621, moved.u(), 1e-15);
        assertEquals(0.5269, moved.v(), 1e-15);
    }
}
