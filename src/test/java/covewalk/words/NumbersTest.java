package covewalk.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {

    private final Numbers english = new Numbers(Locale.ENGLISH);

    /** Worked by hand with the inch of exactly 25.4 mm (international yard and pound agreement, 1959). */
    @ParameterizedTest(name = "{2}")
    @CsvSource(textBlock = """
        # m,     written,          why
        0,       0 ft 0 in,        the datum
        0.3048,  1 ft 0 in,        a foot
        5,       16 ft 4 3/4 in,   196.85 in; 3/4 is nearer than a whole inch
        0.00635, 0 ft 0 1/4 in,    a quarter inch alone
        0.6090,  2 ft 0 in,        23.98 in carries into the next foot
        12.5,    41 ft 0 1/4 in,   492.126 in
        """)
    void writesLengthsAsOnATapeMeasure(double m, String written, String why) {
        assertEquals(written, english.feetInches(m), why);
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(textBlock = """
        # value,   written, why
        0.99999,   0.999,   never 1
        1,         0.999,   not even where the sums say so
        0.9499,    0.949,   cut and not rounded up to the usual bar of 0.95
        0,         0.000,   nothing
        """)
    void neverOverstatesAConfidence(double value, String written, String why) {
        assertEquals(written, english.confidence(value), why);
    }

    @Test
    void takesTheDecimalMarkOfTheLanguageAndNotOfTheMachine() {
        assertEquals("3,40", new Numbers(Locale.GERMAN).steps(3.4));
        assertEquals("3.40", english.steps(3.4));
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(textBlock = """
        # value,   most, written,  why
        2,         2,    2,        no idle zeros
        0.006,     2,    0.01,     one that does not vanish is rounded
        0.001,     2,    0.001,    a limit of 0 steps is none
        0.005,     2,    0.005,    which half to even makes 0
        -0.00015,  2,    −0.00015, either side of 0
        0.000126,  2,    0.00013,  two digits are enough
        0.3,       0,    0.3,      also where whole numbers are shown
        0,         2,    0,        nothing is nothing
        5.6e-17,   2,    0,        what 0.1 + 0.2 - 0.3 leaves
        """)
    void showsNoZeroForWhatIsNone(double value, int mostDecimals, String written, String why) {
        assertEquals(written, english.plain(value, mostDecimals), why);
    }

    @Test
    void givesZeroNoSign() {
        assertEquals("0.00", english.fixed(-0.001, 2));
        assertEquals("\u22120.01", english.fixed(-0.01, 2));
    }
}
