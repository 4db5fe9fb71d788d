package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CovarianceTest {

    private static final Covariance SLANTED = new Covariance(2.5, 1.5, 2.5); // axes 2 and 1, the longer at 45 degrees

    @Test
    void findsTheLongAxisAndTheShortOne() {
        Covariance.Axes axes = SLANTED.eigen();
        assertEquals(2, axes.larger(), 1e-15);
        assertEquals(1, axes.smaller(), 1e-15);
        assertEquals(axes.du(), axes.dv(), 1e-15);
        assertEquals(1, Math.hypot(axes.du(), axes.dv()), 1e-15);
    }

    @ParameterizedTest(name = "along ({0}, {1}): {2}")
    @CsvSource({"1, 1, 2", "-3, -3, 2", "1, -1, 1", "1, 0, 1.5811388300841898", "0, 0, 2"})
    void measuresAlongADirection(double du, double dv, double sd) {
        assertEquals(sd, SLANTED.alongSd(du, dv), 1e-15);
    }

    @Test
    void isTheSameAllAroundWhereIsotropic() {
        Covariance c = Covariance.isotropic(0.0003);
        assertEquals(0.0003, c.alongSd(0.2, -0.7), 1e-18);
        assertEquals(c.eigen().larger(), c.eigen().smaller(), 0);
        assertEquals(0, Covariance.ZERO.alongSd(1, 2), 0);
    }

    @Test
    void addsAndScalesVariances() {
        assertEquals(new Covariance(4, 1.5, 4), SLANTED.plus(new Covariance(1.5, 0, 1.5)));
        assertEquals(new Covariance(1.25, 0.75, 1.25), SLANTED.times(0.5));
        assertEquals(SLANTED, SLANTED.plus(Covariance.ZERO));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvSource({"-1, 0, 1", "1, 0, -1", "1, 1.1, 1", "1, -1.1, 1", "NaN, 0, 1", "1, NaN, 1", "1, 0, NaN", "Infinity, 0, 1",
        "0, 0.1, 1"})
    void refusesWhatNoPairOfValuesHas(double uu, double uv, double vv) {
        assertThrows(IllegalArgumentException.class, () -> new Covariance(uu, uv, vv));
    }

    @Test
    void refusesANegativeUncertainty() {
        assertThrows(IllegalArgumentException.class, () -> Covariance.isotropic(-1e-9));
        assertThrows(IllegalArgumentException.class, () -> Covariance.isotropic(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> SLANTED.times(-1));
    }

    /** GUM 5.2.2: u^2(y) = sum of c_i c_j u_ij; here once more by matrix products, element by element. */
    @Test
    void isCarriedThroughADerivativeByTheLawOfPropagation() {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 1000; i++) {
            double[] m = random.doubles(4, -2, 2).toArray();
            Covariance carried = new Jacobian(m[0], m[1], m[2], m[3]).carry(SLANTED);
            double[] jc = {m[0] * 2.5 + m[1] * 1.5, m[0] * 1.5 + m[1] * 2.5, m[2] * 2.5 + m[3] * 1.5, m[2] * 1.5 + m[3] * 2.5};
            assertEquals(jc[0] * m[0] + jc[1] * m[1], carried.uu(), 1e-13);
            assertEquals(jc[0] * m[2] + jc[1] * m[3], carried.uv(), 1e-13);
            assertEquals(jc[2] * m[2] + jc[3] * m[3], carried.vv(), 1e-13);
        }
    }

    @Test
    void goesThroughADerivativeAndItsInverseUnchanged() {
        Jacobian j = new Jacobian(909, 30, -200, 700);
        Covariance back = j.inverse().carry(j.carry(SLANTED));
        assertEquals(SLANTED.uu(), back.uu(), 1e-12);
        assertEquals(SLANTED.uv(), back.uv(), 1e-12);
        assertEquals(SLANTED.vv(), back.vv(), 1e-12);
    }

    @Test
    void survivesTheRoundingOfAVeryThinEllipse() {
        Covariance thin = new Jacobian(1, 1, 1, 1 + 1e-12).carry(new Covariance(1, -1, 1));
        assertTrue(thin.uu() >= 0 && thin.vv() >= 0);
        assertTrue(thin.eigen().smaller() >= 0);
    }

    @Test
    void hasNoWayBackFromTwoThingsThatChangeTogether() {
        assertThrows(ArithmeticException.class, () -> new Jacobian(1, 2, 2, 4).inverse());
        assertThrows(IllegalArgumentException.class, () -> new Jacobian(1, Double.NaN, 2, 4));
    }

    @Test
    void chainsDerivativesInTheOrderTheyAreTaken() {
        Jacobian outer = new Jacobian(1, 2, 3, 4);
        Jacobian inner = new Jacobian(5, 6, 7, 8);
        assertEquals(new Jacobian(19, 22, 43, 50), outer.times(inner));
        assertEquals(outer.first(inner.first(1, 2), inner.second(1, 2)), outer.times(inner).first(1, 2), 0);
        assertEquals(outer.second(inner.first(1, 2), inner.second(1, 2)), outer.times(inner).second(1, 2), 0);
    }
}
