package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ColourTemperatureTest {

    /**
     * The figures computed elsewhere are printed to 0.01 K and 1e-6. The published CCT rests on the lamp's spectrum, so
     * that x and y rounded to four decimals may miss it by what their last digit is worth.
     */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "cie-illuminants.csv", useHeadersInDisplayName = true)
    void findsTheCctOfCieIlluminants(ArgumentsAccessor row) {
        CctDuv found = cct(new Xy(row.getDouble(1), row.getDouble(2)));
        assertEquals(row.getDouble(6), found.cctK(), 0.0051, "computed elsewhere from the same x, y");
        assertEquals(row.getDouble(7), found.duv(), 0.51e-6, "computed elsewhere from the same x, y");
        if (row.getString(10).equals("yes")) {
            double roundingOfXy = Math.max(row.getDouble(9) - found.cctK(), found.cctK() - row.getDouble(8));
            assertEquals(row.getDouble(4), found.cctK(), row.getDouble(5) / 2 + roundingOfXy, "published");
        }
        if (row.get(13) != null) {
            assertEquals(row.getDouble(13), cct(new Xy(row.getDouble(11), row.getDouble(12))).cctK(), 0.051);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "cct-duv-testvectors.csv", useHeadersInDisplayName = true)
    void agreesWithOtherSourcesAsFarAsTheyAreExact(ArgumentsAccessor row) {
        Uv uv = row.get(2) != null ? new Uv(row.getDouble(2), row.getDouble(3))
                : new Xy(row.getDouble(4), row.getDouble(5)).toUv();
        CctDuv found = cct(uv);
        assertEquals(row.getDouble(8), found.cctK(), 0.51e-6, "exact, to six decimals");
        assertEquals(row.getDouble(9), found.duv(), 0.51e-9, "exact, to nine decimals");
        double printed = 1e-6 + 0.006 * Math.abs(row.getDouble(10)); // the difference has three figures
        assertEquals(row.getDouble(10), row.getDouble(6) - found.cctK(), printed, "how far the source is from exact");
        if (row.get(7) != null && row.get(11) != null) {
            assertEquals(row.getDouble(11), row.getDouble(7) - found.duv(), 1e-9 + 0.06 * Math.abs(row.getDouble(11)));
        }
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(textBlock = """
            # u',   v',     what,               why
            0.1000, 0.1000, NO_REAL_COLOUR,     left of the violet edge
            0.5000, 0.5800, NO_REAL_COLOUR,     beyond red and yellow
            0.0800, 0.5700, TOO_FAR_FROM_LOCUS, a green LED
            0.2000, 0.1500, TOO_FAR_FROM_LOCUS, a blue LED; farther than 0.05 even from the hottest black body
            0.1800, 0.3900, ABOVE_20000_K,      a very blue sky
            0.4600, 0.5290, BELOW_1000_K,       an ember
            0.5400, 0.5150, BELOW_1000_K,       a red LED
            """)
    void saysWhyThereIsNoCct(double u, double v, NoCct what, String why) {
        assertEquals(what, ColourTemperature.of(new UvPrime(u, v)));
    }

    @ParameterizedTest(name = "{0} K, {1}")
    @CsvSource({"1000, -0.05", "1000, 0", "20000, 0.05", "20000, 0", "20000, -0.05", "5000, 0.05", "5000, -0.05"})
    void takesTheEdgesOfTheRangeThereAndBack(double cctK, double duv) {
        CctDuv edge = new CctDuv(cctK, duv);
        CctDuv[] found = {cct(edge.toUv()), cct(edge.toXy()), assertInstanceOf(CctDuv.class, ColourTemperature.of(edge.toUvPrime()))};
        for (CctDuv back : found) {
            assertEquals(cctK, back.cctK(), 1e-9 * cctK);
            assertEquals(duv, back.duv(), 1e-12);
        }
    }

    @ParameterizedTest(name = "{0} K, {1}")
    @CsvSource(textBlock = """
            # CCT,  Duv,  reason,             just outside of the range, each by ten times what counts as rounding
            999.99, 0,    BELOW_1000_K
            20001,  0.01, ABOVE_20000_K
            6000,   0.05000000001, TOO_FAR_FROM_LOCUS
            6000,  -0.05000000001, TOO_FAR_FROM_LOCUS
            """)
    void refusesWhatIsJustOutside(double cctK, double duv, NoCct reason) {
        assertEquals(reason, ColourTemperature.of(new ExactSearch().toUv(1e6 / cctK, duv)));
    }

    /** The least distance, looked for without any cleverness, over the whole diagram. */
    @Test
    void findsTheNearestPointOfTheLocusWhereverTheColourLies() {
        PlanckianSums sums = new PlanckianSums();
        double[][] locus = new double[1500][];
        for (int i = 0; i < locus.length; i++) {
            locus[i] = sums.at(i + 1);
        }
        int judged = 0;
        for (double u = 0.005; u < 0.63; u += 0.007) {
            for (double v = 0.02; v < 0.4; v += 0.005) {
                judged += new Uv(u, v).isReal() && agrees(locus, new Uv(u, v)) ? 1 : 0;
            }
        }
        assertTrue(judged > 500, "only " + judged + " colours had a CCT");
    }

    private static boolean agrees(double[][] locus, Uv uv) {
        int nearest = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i < locus.length; i++) {
            double distance = Math.hypot(uv.u() - locus[i][0], uv.v() - locus[i][1]);
            nearest = distance < least ? i : nearest;
            least = Math.min(distance, least);
        }
        int mired = nearest + 1;
        boolean near = least < 0.05 - 1e-4;
        ColourTemperature found = ColourTemperature.of(uv);
        if (near && mired > 51 && mired < 999) {
            assertEquals(mired, 1e6 / assertInstanceOf(CctDuv.class, found, uv.toString()).cctK(), 0.51, uv.toString());
        } else if (least > 0.05 + 1e-4 || mired < 49 || mired > 1001) {
            assertInstanceOf(NoCct.class, found, uv.toString());
        }
        return found instanceof CctDuv;
    }

    @Test
    void fallsSteadilyFromBlueToRedAlongTheLocusAndBesideIt() {
        for (double duv : new double[] {-0.05, -0.01, 0, 0.0004}) {
            double before = Double.MAX_VALUE;
            for (double mired = 50; mired <= 1000; mired += 0.01) {
                double cctK = cct(new CctDuv(Math.min(20_000, 1e6 / mired), duv).toUv()).cctK();
                assertTrue(cctK < before, cctK + " K after " + before + " K");
                before = cctK;
            }
        }
    }

    @Test
    void doesNotJump() {
        double perStep = 1e-9;
        for (double u = 0.19; u < 0.42; u += 0.0007) {
            CctDuv here = cct(new Uv(u, 0.34));
            CctDuv there = cct(new Uv(u + perStep, 0.34));
            assertEquals(here.cctK(), there.cctK(), perStep * 2e8, "u " + u); // 2e8 K: the steepest place, at the hot end
            assertEquals(here.duv(), there.duv(), 2 * perStep, "u " + u);
        }
    }

    private static CctDuv cct(Xy xy) {
        return cct(xy.toUv());
    }

    private static CctDuv cct(Uv uv) {
        return assertInstanceOf(CctDuv.class, ColourTemperature.of(uv), uv.toString());
    }
}
