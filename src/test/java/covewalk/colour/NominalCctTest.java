package covewalk.colour;

import static covewalk.colour.NominalCct.Edition.ANSI_2008;
import static covewalk.colour.NominalCct.Edition.ANSI_2015_2017;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** ANSI C78.377, as far as its tables were read; each file says which row was read where. */
class NominalCctTest {

    private static final double FOUR_DECIMALS = 0.5e-4 + 1e-12;

    @ParameterizedTest(name = "{0} {1} K")
    @CsvFileSource(resources = "ansi-c78-377-nominal.csv", useHeadersInDisplayName = true)
    void hasTheCentresOfTheTable(ArgumentsAccessor row) {
        NominalCct nominal = NominalCct.of(edition(row), row.getInteger(1)).orElseThrow();
        assertEquals(row.getDouble(2), nominal.targetCctK());
        assertEquals(row.getDouble(3), nominal.toleranceK());
        assertEquals(row.getDouble(6), nominal.centre().x(), 1e-12);
        assertEquals(row.getDouble(7), nominal.centre().y(), 1e-12);
        comesBack(new Xy(row.getDouble(6), row.getDouble(7)), row.getDouble(2), row.getDouble(4), FOUR_DECIMALS, 0.5e-4);
    }

    /** Rows "use with care" differ from the rule of the edition by up to 0.00017 in a source that gives no source. */
    @ParameterizedTest(name = "{0} {1} K corner {2}")
    @CsvFileSource(resources = "ansi-c78-377-quadrangles.csv", useHeadersInDisplayName = true)
    void hasTheCornersOfTheTable(ArgumentsAccessor row) {
        Xy corner = NominalCct.of(edition(row), row.getInteger(1)).orElseThrow().corners().get(row.getInteger(2) - 1);
        assertEquals(row.getDouble(7), corner.x(), 0.6e-4, "computed elsewhere, before rounding");
        assertEquals(row.getDouble(8), corner.y(), 0.6e-4, "computed elsewhere, before rounding");
        if (row.get(5) != null) {
            boolean care = row.getString(9).contains("use with care");
            double tolerance = care ? 2.5e-4 : 1e-12;
            assertEquals(row.getDouble(5), corner.x(), tolerance, "printed");
            assertEquals(row.getDouble(6), corner.y(), tolerance, "printed");
            comesBack(new Xy(row.getDouble(5), row.getDouble(6)), row.getDouble(3), row.getDouble(4), care ? 2.5e-4 : FOUR_DECIMALS, 0.5e-5);
        }
    }

    /** The printed x, y give the defining CCT and Duv back to within what their digits are worth there, and those of Duv. */
    private static void comesBack(Xy printed, double cctK, double duv, double digits, double duvDigits) {
        CctDuv found = (CctDuv) ColourTemperature.of(printed);
        Jacobian j = found.jacobianToUvPrime().inverse().times(printed.jacobianToUvPrime());
        assertEquals(cctK, found.cctK(), 1.02 * digits * (Math.abs(j.a()) + Math.abs(j.b())));
        assertEquals(duv, found.duv(), 1.02 * digits * (Math.abs(j.c()) + Math.abs(j.d())) + duvDigits);
    }

    @ParameterizedTest(name = "{0} {1} K")
    @CsvFileSource(resources = "ansi-c78-377-nominal.csv", useHeadersInDisplayName = true)
    void findsItsOwnCentresAndCorners(ArgumentsAccessor row) {
        NominalCct nominal = NominalCct.of(edition(row), row.getInteger(1)).orElseThrow();
        assertEquals(Optional.of(nominal), NominalCct.of(edition(row), nominal.centre()));
        nominal.corners().forEach(corner -> assertTrue(nominal.contains(corner)));
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(textBlock = """
            # CCT, Duv,     why
            2725,  0.0065,  above the locus by more than 0.006
            2725,  -0.0065, below it by more
            2575,  0,       warmer than 2580 K
            2875,  0,       cooler than 2870 K
            """)
    void leavesOutWhatIsJustOutside(double cctK, double duv, String why) {
        assertFalse(NominalCct.of(ANSI_2008, 2700).orElseThrow().contains(new CctDuv(cctK, duv).toXy()));
    }

    @Test
    void listsTheNominalCctsWarmToCool() {
        assertEquals(List.of(2700, 3000, 3500, 4000, 4500, 5000, 5700, 6500),
                NominalCct.all(ANSI_2008).stream().map(NominalCct::nominalK).toList());
        assertEquals(List.of(2200, 2500, 2700, 3000, 3500, 4000, 4500, 5000, 5700, 6500),
                NominalCct.all(ANSI_2015_2017).stream().map(NominalCct::nominalK).toList());
        assertEquals(Optional.empty(), NominalCct.of(ANSI_2008, 2200));
        assertEquals(Optional.empty(), NominalCct.of(ANSI_2008, new Xy(0.6, 0.3)));
    }

    @Test
    void hasFourCorners() {
        Xy xy = new Xy(0.4, 0.4);
        assertThrows(IllegalArgumentException.class, () -> new NominalCct(ANSI_2008, 2700, 2725, 145, xy, List.of(xy)));
    }

    private static NominalCct.Edition edition(ArgumentsAccessor row) {
        return row.getString(0).equals(ANSI_2008.years()) ? ANSI_2008 : ANSI_2015_2017;
    }
}
