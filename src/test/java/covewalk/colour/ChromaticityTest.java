package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChromaticityTest {

    private static final double ROUNDING = 1e-14;

    @ParameterizedTest(name = "{6}")
    @CsvSource(textBlock = """
            # x,               y,                u,              v,              u',             v',             why
            0.333333333333333, 0.333333333333333, 0.210526315789, 0.315789473684, 0.210526315789, 0.473684210526, 'equal energy: (4/19, 6/19) and (4/19, 9/19), CIE 15 by hand'
            0.4369,            0.4041,            0.2505376036,   0.3475929696,   0.2505376036,   0.5213894544,   'a 3000 K white, u = 4x/(3 - 2x + 12y), v = 6y/(the same), by hand'
            1,                 1e-300,            4,              6e-300,         4,              9e-300,         'the corner of X alone'
            0,                 1,                 0,              0.4,            0,              0.6,            'the corner of Y alone'
            """)
    void putsAColourInTheThreeDiagrams(double x, double y, double u, double v, double u2, double v2, String why) {
        Xy xy = new Xy(x, y);
        assertEquals(u, xy.toUv().u(), 1e-9);
        assertEquals(v, xy.toUv().v(), 1e-9);
        assertEquals(u2, xy.toUvPrime().u(), 1e-9);
        assertEquals(v2, xy.toUvPrime().v(), 1e-9);
    }

    @Test
    void comesBackFromEveryDiagram() {
        SplittableRandom random = new SplittableRandom(1);
        for (int i = 0; i < 10_000; i++) {
            double y = random.nextDouble(1e-6, 1);
            Xy xy = new Xy(random.nextDouble(0, 1 - y), y);
            assertSame(xy, xy.toUv().toXy());
            assertSame(xy, xy.toUvPrime().toXy());
            assertSame(xy, xy.toUvPrime().toUv().toXy());
            assertSame(xy, xy.toUv().toUvPrime().toXy());
        }
    }

    @Test
    void keepsTheColourWhateverTheBrightness() {
        Xy xy = new Xyz(0.9505, 1, 1.089).chromaticity();
        assertSame(xy, new Xyz(950.5, 1000, 1089).chromaticity());
        assertEquals(0.3127, xy.x(), 5e-5); // illuminant D65, CIE 15
        assertEquals(0.3290, xy.y(), 5e-5);
    }

    @Test
    void knowsHowUPrimeAndVPrimeChangeWithXAndY() {
        SplittableRandom random = new SplittableRandom(2);
        double h = 1e-6;
        for (int i = 0; i < 1000; i++) {
            double x = random.nextDouble(0.05, 0.6);
            double y = random.nextDouble(0.05, 0.38);
            Jacobian j = new Xy(x, y).jacobianToUvPrime();
            UvPrime left = new Xy(x - h, y).toUvPrime();
            UvPrime right = new Xy(x + h, y).toUvPrime();
            UvPrime below = new Xy(x, y - h).toUvPrime();
            UvPrime above = new Xy(x, y + h).toUvPrime();
            assertEquals((right.u() - left.u()) / (2 * h), j.a(), 1e-8);
            assertEquals((above.u() - below.u()) / (2 * h), j.b(), 1e-8);
            assertEquals((right.v() - left.v()) / (2 * h), j.c(), 1e-8);
            assertEquals((above.v() - below.v()) / (2 * h), j.d(), 1e-8);
        }
    }

    @Test
    void knowsTheWayBackFromUPrimeVPrimeAsTheInverse() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 1000; i++) {
            Xy xy = new Xy(random.nextDouble(0.05, 0.6), random.nextDouble(0.05, 0.38));
            Jacobian unity = xy.toUvPrime().jacobianToXy().times(xy.jacobianToUvPrime());
            assertEquals(1, unity.a(), 1e-12);
            assertEquals(0, unity.b(), 1e-12);
            assertEquals(0, unity.c(), 1e-12);
            assertEquals(1, unity.d(), 1e-12);
        }
    }

    @ParameterizedTest(name = "x {0}, y {1}")
    @CsvSource({"0.3, 0", "0.3, -0.1", "-0.01, 0.3", "0.6, 0.41", "NaN, 0.3", "0.3, NaN", "Infinity, 0.3", "0.3, Infinity"})
    void refusesWhatIsNoChromaticity(double x, double y) {
        String said = assertThrows(IllegalArgumentException.class, () -> new Xy(x, y)).getMessage();
        assertTrue(said.contains("x " + x) && said.contains("at most 1"), said);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 4.1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsOutsideTheUniformDiagrams(double u) {
        assertThrows(IllegalArgumentException.class, () -> new Uv(u, 0.3));
        assertThrows(IllegalArgumentException.class, () -> new UvPrime(u, 0.5));
        assertThrows(IllegalArgumentException.class, () -> new Uv(0.2, u * 1.5 - 1));
        assertThrows(IllegalArgumentException.class, () -> new UvPrime(0.2, u * 1.5 - 1));
    }

    @Test
    void refusesLightThatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> new Xyz(0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Xyz(1, -1e-9, 1));
        assertThrows(IllegalArgumentException.class, () -> new Xyz(1, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new Xyz(1, Double.POSITIVE_INFINITY, 1));
        assertThrows(IllegalArgumentException.class, () -> new Xyz(1, 0, 1).chromaticity());
    }

    @Test
    void takesAColourOnTheLineXPlusYIsOneThereAndBack() {
        for (int i = 0; i <= 1000; i++) {
            double y = Math.max(i / 1000.0, 1e-9);
            assertSame(new Xy(1 - y, y), new Xy(1 - y, y).toUvPrime().toUv().toXy());
        }
    }

    private static void assertSame(Xy expected, Xy actual) {
        assertEquals(expected.x(), actual.x(), ROUNDING);
        assertEquals(expected.y(), actual.y(), ROUNDING);
    }
}
