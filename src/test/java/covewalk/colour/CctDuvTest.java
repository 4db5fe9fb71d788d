package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CctDuvTest {

    @ParameterizedTest(name = "{0} K, {1}")
    @CsvSource({"999.999, 0", "20000.001, 0", "NaN, 0", "Infinity, 0", "-3000, 0", "3000, 0.0501", "3000, -0.0501",
        "3000, NaN", "3000, Infinity", "0, 0"})
    void refusesWhatIsOutOfRange(double cctK, double duv) {
        String said = assertThrows(IllegalArgumentException.class, () -> new CctDuv(cctK, duv)).getMessage();
        assertTrue(said.contains(duv == 0 ? "1000 to 20000 K" : "-0.05 to 0.05"), said);
    }

    @Test
    void refusesABlackBodyOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> PlanckianLocus.at(999));
        assertThrows(IllegalArgumentException.class, () -> PlanckianLocus.at(20_001));
    }

    @Test
    void standsAboveTheLocusWhereDuvIsPositive() {
        assertTrue(new CctDuv(3000, 0.003).toUv().v() > PlanckianLocus.at(3000).v()); // ANSI C78.377: the sign of v - v0
        assertTrue(new CctDuv(20_000, 0.003).toUv().v() > PlanckianLocus.at(20_000).v());
    }

    @ParameterizedTest(name = "{0} K: real up to {1}")
    @CsvSource(textBlock = """
            # CCT, real up to: the least Duv outside the spectral locus, found by steps of 1e-5 over the polygon
            1000,  0.00050
            1500,  0.00376
            2000,  0.01043
            2500,  0.01950
            3000,  0.03027
            3500,  0.04247
            """)
    void isNoColourAboveTheSpectralLocus(double cctK, double highest) {
        assertTrue(new CctDuv(cctK, highest).isReal());
        assertFalse(new CctDuv(cctK, highest + 2e-5).isReal());
        assertEquals(NoCct.NO_REAL_COLOUR, ColourTemperature.of(new CctDuv(cctK, highest + 2e-5).toUv()));
    }

    @Test
    void isARealColourEverywhereElse() {
        for (double mired = 50; mired <= 1000; mired += 0.5) {
            double cctK = Math.min(20_000, 1e6 / mired);
            assertTrue(new CctDuv(cctK, -0.05).isReal());
            assertTrue(new CctDuv(cctK, 0).isReal());
            assertTrue(cctK < 4000 || new CctDuv(cctK, 0.05).isReal());
        }
    }

    @Test
    void hasNoChromaticityWhereXAndYWouldExceedOne() {
        CctDuv none = new CctDuv(1000, 0.05);
        assertFalse(none.isReal());
        assertThrows(IllegalArgumentException.class, none::toXy);
    }

    @Test
    void knowsHowUPrimeAndVPrimeChangeWithCctAndDuv() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            double cctK = 1e6 / random.nextDouble(51, 990);
            double duv = random.nextDouble(-0.049, 0.049);
            Jacobian j = new CctDuv(cctK, duv).jacobianToUvPrime();
            double h = cctK * 1e-4;
            double d = 1e-5;
            UvPrime cool = new CctDuv(cctK + h, duv).toUvPrime();
            UvPrime warm = new CctDuv(cctK - h, duv).toUvPrime();
            UvPrime above = new CctDuv(cctK, duv + d).toUvPrime();
            UvPrime below = new CctDuv(cctK, duv - d).toUvPrime();
            assertEquals((cool.u() - warm.u()) / (2 * h) * cctK, j.a() * cctK, 1e-7);
            assertEquals((above.u() - below.u()) / (2 * d), j.b(), 1e-9);
            assertEquals((cool.v() - warm.v()) / (2 * h) * cctK, j.c() * cctK, 1e-7);
            assertEquals((above.v() - below.v()) / (2 * d), j.d(), 1e-9);
        }
    }

    @Test
    void knowsTheWayBackFromUPrimeAndVPrime() {
        CctDuv warm = new CctDuv(2700, 0.003);
        Jacobian back = warm.jacobianToUvPrime().inverse();
        UvPrime a = warm.toUvPrime().plus(1e-6, 0);
        UvPrime b = warm.toUvPrime().plus(0, 1e-6);
        assertEquals((cct(a).cctK() - 2700) / 1e-6, back.a(), 1e-3 * Math.abs(back.a()));
        assertEquals((cct(b).cctK() - 2700) / 1e-6, back.b(), 1e-3 * Math.abs(back.b()));
        assertEquals((cct(a).duv() - 0.003) / 1e-6, back.c(), 1e-5);
        assertEquals((cct(b).duv() - 0.003) / 1e-6, back.d(), 1e-5);
    }

    private static CctDuv cct(UvPrime colour) {
        return (CctDuv) ColourTemperature.of(colour);
    }
}
