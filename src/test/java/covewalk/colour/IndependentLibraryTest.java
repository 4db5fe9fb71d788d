package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.github.ajalt.colormath.Illuminant;
import com.github.ajalt.colormath.model.LUV;
import com.github.ajalt.colormath.model.XYZ;
import com.github.ajalt.colormath.model.XYZColorSpaces;
import com.github.ajalt.colormath.model.xyY;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A second opinion on x, y, u', v' and u, v: Colormath 3.6.1 (MIT licence, tests only), taken because it is a colour
 * library for general use, written by others, that has CIE xyY and CIELUV with a stated white. It has no CCT, and counts
 * in single precision: 1e-6 here, a hundredth of the last digit of a field meter.
 */
class IndependentLibraryTest {

    private static final double SINGLE_PRECISION = 1e-6;

    private final SplittableRandom random = new SplittableRandom(4);
    private float x;
    private float y;

    @BeforeEach
    void begin() {
        next();
    }

    @Test
    void agreesOnXAndYOfTristimulusValues() {
        for (int i = 0; i < 2000; i++, next()) {
            XYZ light = light();
            xyY theirs = light.toCIExyY();
            Xy ours = new Xyz(light.getX(), light.getY(), light.getZ()).chromaticity();
            assertEquals(theirs.getX(), ours.x(), SINGLE_PRECISION);
            assertEquals(theirs.getY(), ours.y(), SINGLE_PRECISION);
        }
    }

    /** CIELUV is u* = 13 L* (u' - u'n): with the white's own u'n, v'n added back, it is u', v'. */
    @Test
    void agreesOnUPrimeAndVPrimeByWayOfCieLuv() {
        xyY white = Illuminant.INSTANCE.getD65().getChromaticity();
        UvPrime origin = uvPrimeByHand(white.getX(), white.getY());
        for (int i = 0; i < 2000; i++, next()) {
            LUV theirs = light().toLUV();
            UvPrime ours = new Xy(x, y).toUvPrime();
            assertEquals(theirs.getU() / (13 * theirs.getL()) + origin.u(), ours.u(), SINGLE_PRECISION);
            assertEquals(theirs.getV() / (13 * theirs.getL()) + origin.v(), ours.v(), SINGLE_PRECISION);
            assertEquals(2 * ours.v() / 3, new Xy(x, y).toUv().v(), 1e-15); // CIE 15: v = 2/3 v', u = u'
            assertEquals(ours.u(), new Xy(x, y).toUv().u(), 1e-15);
        }
    }

    private static UvPrime uvPrimeByHand(double x, double y) {
        return new UvPrime(4 * x / (3 - 2 * x + 12 * y), 9 * y / (3 - 2 * x + 12 * y));
    }

    private void next() {
        x = (float) random.nextDouble(0.2, 0.6);
        y = (float) random.nextDouble(0.2, 0.4);
    }

    private XYZ light() {
        return new XYZ(x / y, 1, (1 - x - y) / y, 1, XYZColorSpaces.INSTANCE.getXYZ65());
    }
}
