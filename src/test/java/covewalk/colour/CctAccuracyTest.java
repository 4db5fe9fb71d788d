package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * What is promised: CCT to 1e-9 and Duv to 1e-12 of the definition, both ways, over 1000 to 20000 K and Duv -0.05 to
 * 0.05. Held against the sums of the definition itself, and against figures computed by other programs.
 */
class CctAccuracyTest {

    private static final double CCT_BOUND = 1e-9;
    private static final double DUV_BOUND = 1e-12;
    private static final int COLOURS = 20_000;

    private final ExactSearch exact = new ExactSearch();

    /** Every edge and corner of the range, and evenly over its inside. */
    private static double[][] sample() {
        SplittableRandom random = new SplittableRandom(6);
        double[][] sample = new double[COLOURS][];
        for (int i = 0; i < COLOURS; i++) {
            double cctK = i % 10 == 0 ? 1000 : i % 10 == 1 ? 20_000 : 1e6 / random.nextDouble(50, 1000);
            double duv = i % 7 == 0 ? -0.05 : i % 7 == 1 ? 0.05 : random.nextDouble(-0.05, 0.05);
            sample[i] = new double[] {cctK, duv};
        }
        return sample;
    }

    @Test
    void findsCctAndDuvOfTheDefinition() {
        int real = 0;
        for (double[] pair : sample()) {
            Uv uv = exact.toUv(1e6 / pair[0], pair[1]);
            if (uv.isReal()) {
                real++;
                CctDuv found = assertInstanceOf(CctDuv.class, ColourTemperature.of(uv), pair[0] + " K, " + pair[1]);
                assertEquals(pair[0], found.cctK(), CCT_BOUND * pair[0]);
                assertEquals(pair[1], found.duv(), DUV_BOUND, () -> pair[0] + " K");
            }
        }
        assertTrue(real > COLOURS / 2, "only " + real + " were real colours");
    }

    /** A displacement along the locus counts as the CCT it stands for, one across it as Duv. */
    @Test
    void placesCctAndDuvWhereTheDefinitionDoes() {
        for (double[] pair : sample()) {
            double mired = 1e6 / pair[0];
            double[] back = exact.nearest(new CctDuv(pair[0], pair[1]).toUv(), mired);
            assertEquals(mired, back[0], CCT_BOUND * mired, () -> pair[0] + " K, " + pair[1]);
            assertEquals(pair[1], back[1], DUV_BOUND, () -> pair[0] + " K");
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "exact-grid.csv", useHeadersInDisplayName = true)
    void agreesWithTwoOtherProgramsThatComputedTheDefinition(double cctK, double duv, double x, double y) {
        CctDuv found = assertInstanceOf(CctDuv.class, ColourTemperature.of(new Xy(x, y)));
        // x and y are given to 5e-13 at worst, which at 20000 K and Duv 0.05 comes to 3e-8 K per K and 2e-12 in Duv
        Jacobian perXy = found.jacobianToUvPrime().inverse().times(new Xy(x, y).jacobianToUvPrime());
        double digits = 5e-13;
        assertEquals(cctK, found.cctK(), CCT_BOUND * cctK + digits * (Math.abs(perXy.a()) + Math.abs(perXy.b())));
        assertEquals(duv, found.duv(), DUV_BOUND + digits * (Math.abs(perXy.c()) + Math.abs(perXy.d())));
        Xy back = new CctDuv(cctK, duv).toXy();
        assertEquals(x, back.x(), 3e-12); // what 1e-12 in u, v comes to in x, y, and the digits given
        assertEquals(y, back.y(), 3e-12);
    }
}
