package covewalk.verdict.claim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.Covariance;
import covewalk.colour.NominalCct;
import covewalk.colour.Xy;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuadrangleTest {

    private static final NominalCct NOMINAL = NominalCct.of(ClaimCentre.EDITION, 2700).orElseThrow();

    @ParameterizedTest(name = "{3}")
    @CsvSource(textBlock = """
        # margin, sd,  sure,      source
        0.07,     0.05, 0.9192433, 'JCGM 106:2012, 7.4, the Zener diode (prints 0.92; the figures from memory)'
        1.645,    1,    0.9500151, 'JCGM 106:2012, 8.3.2, guard band of 1.645 u (normal tail, computed)'
        2,        1,    0.9772499, 'JCGM 106:2012, 8.3.2, guard band of 2 u (normal tail, computed)'
        """)
    void isSureOfOneEdgeAsTheStandardIs(double margin, double sd, double sure, String source) {
        assertEquals(sure, Quadrangle.sure(margin, sd), 1e-6);
    }

    @Test
    void theMiddleIsInAndWhatIsFarOffIsOutForAGoodMeter() {
        Covariance good = Covariance.isotropic(0.001);
        assertTrue(Quadrangle.of(NOMINAL, NOMINAL.centre(), good, Double.POSITIVE_INFINITY).within() > 0.999);
        assertTrue(Quadrangle.of(NOMINAL, new Xy(0.42, 0.40), good, Double.POSITIVE_INFINITY).beyond() > 0.999);
    }

    @Test
    void noCornerIsFoundOutOfTheQuadrangleOrInItMoreOftenThanTheErrorRate() {
        Random random = new Random(20261005);
        Xy corner = NOMINAL.corners().get(0);
        Covariance covariance = Covariance.isotropic(0.002);
        int out = 0;
        int in = 0;
        for (int i = 0; i < 20_000; i++) {
            Xy read = new Xy(corner.x() + 0.002 * random.nextGaussian(), corner.y() + 0.002 * random.nextGaussian());
            out += Quadrangle.of(NOMINAL, read, covariance, Double.POSITIVE_INFINITY).beyond() >= 0.95 ? 1 : 0;
            in += Quadrangle.of(NOMINAL, read, covariance, Double.POSITIVE_INFINITY).within() >= 0.95 ? 1 : 0;
        }
        assertTrue(out <= 1050 && in <= 1050, out + " out, " + in + " in, of 20 000"); // 5 %, and two standard deviations
        assertTrue(out > 100, "the rate is spent, not idle: " + out);
    }
}
