package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The stored numbers against their origin: the colour-matching functions beside this test. */
class LocusTableTest {

    @Test
    void holdsThePlanckianLocusThatTheSumsGive() {
        double[] stored = StoredNumbers.read(LocusTable.FILE);
        double[] made = WriteLocusTables.planckian();
        assertEquals(made.length, stored.length);
        for (int i = 0; i < made.length; i++) {
            int power = i / LocusTable.PARTS % Septic.TERMS;
            double reach = Math.pow(LocusTable.STRETCH / 2, power); // what the term comes to at the end of its stretch
            assertEquals(made[i] * reach, stored[i] * reach, 1e-12, "number " + i);
        }
    }

    @Test
    void holdsTheSpectralLocusOfTheColourMatchingFunctions() {
        assertArrayEquals(WriteLocusTables.spectral(), StoredNumbers.read(SpectralLocus.FILE), 1e-15);
    }

    @Test
    void runsOnSmoothlyFromStretchToStretch() {
        LocusTable table = new LocusTable();
        for (int i = 1; i < LocusTable.STRETCHES; i++) {
            double joint = LocusTable.HOT_END + LocusTable.STRETCH * i;
            Uv before = table.at(Math.nextDown(joint)).offset(0.05);
            Uv after = table.at(joint).offset(0.05);
            assertEquals(before.u(), after.u(), 5e-13, joint + " mired");
            assertEquals(before.v(), after.v(), 5e-13, joint + " mired");
        }
    }

    /** Robertson printed u and v to five decimals and the slope of the isotherm to five figures. Its mired 0 is left out. */
    @ParameterizedTest
    @CsvFileSource(resources = "robertson-1968.csv", useHeadersInDisplayName = true)
    void reproducesRobertsonsTable(double mired, double u, double v, double slope) {
        if (mired < LocusTable.HOT_END) {
            return; // beyond 50000 K, where no reading is judged
        }
        LocusPoint p = new LocusTable().at(mired);
        assertEquals(u, p.offset(0).u(), 0.5e-5);
        assertEquals(v, p.offset(0).v(), 0.5e-5);
        assertEquals(slope, -p.tu() / p.tv(), 5e-5 * Math.abs(slope));
    }
}
