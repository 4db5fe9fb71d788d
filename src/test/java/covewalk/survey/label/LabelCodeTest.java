package covewalk.survey.label;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.Reel;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelCodeTest {

    private static LabelCode code(String typed) {
        return Scanned.of(typed.replace('~', '\u001d')).code().orElseThrow();
    }

    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({
            "6291041500213,  true,  the example of GS1's own page on check digits (from memory)",
            "6291041500214,  false, the same with the last digit one more",
            "09501101530003, true,  the GTIN of GS1's Digital Link examples",
            "376104250021234569, true, an SSCC: the example table of the GS1 General Specifications (from memory)",
            "96385074,       true,  an EAN-8 widely printed as an example (from memory)",
            "036000291452,   true,  a UPC widely printed as an example (from memory)"})
    void theLastDigitChecksTheOthers(String digits, boolean checks, String source) {
        assertEquals(checks, Gtin.checks(digits), source);
    }

    @ParameterizedTest(name = "{0} in {1}: {2}")
    @CsvSource({
            "130200, 2026, 2013-02, 2013-02-28, day 00 is the last of February (GS1 General Specifications 3.4.5, as quoted in public code)",
            "160200, 2026, 2016-02, 2016-02-29, the same in a leap year",
            "260715, 2026, 2026-07-15, 2026-07-15, a plain day",
            "770101, 2026, 1977-01-01, 1977-01-01, 49 years back is the past",
            "760101, 2026, 2076-01-01, 2076-01-01, 50 years on is the future",
            "010101, 2099, 2101-01-01, 2101-01-01, over the end of a century"})
    void datesHaveTheirYearNearThisOne(String digits, int thisYear, String text, String lastDay, String source) {
        CodeDate date = CodeDate.of(digits, thisYear).orElseThrow();
        assertEquals(text, date.text(), source);
        assertEquals(lastDay, date.lastDay().toString(), source);
    }

    @ParameterizedTest
    @CsvSource({"261301", "260230", "260732", "260000", "26071", "2607155"})
    void noSuchDayIsNoDate(String digits) {
        assertEquals(Optional.empty(), CodeDate.of(digits, 2026));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
        (01)09501101530003(10)AB(21)S7                   |              | nothing odd
        (01)09501101530004(10)AB                         | CHECK_DIGIT  | the label may be misprinted; it is still what the label says
        (10)AB(21)S7                                     | NO_GTIN      | a lot means little without its product
        (01)09501101530003(11)261301                     | DATE         | a 13th month
        (01)09501101530003(10)AB(10)CD                   | TWICE        | two lots
        (01)09501101530003(10)AB(10)AB                   |              | the same lot twice
        010950110153000310LOT44712100S77                 | RUN_TOGETHER | a scanner that drops separators
        (01)09501101530003(10)L4471                      |              | a short lot
        """)
    void oddThingsAreTold(String typed, String doubts, String why) {
        Set<Doubt> told = doubts == null ? EnumSet.noneOf(Doubt.class)
                : Arrays.stream(doubts.split(" ")).map(Doubt::valueOf).collect(Collectors.toSet());
        assertEquals(told, code(typed).doubts(2026), why);
    }

    @Test
    void aReelGetsWhatTheLabelSaysAndKeepsTheRest() {
        Reel before = new Reel("R1", "Own", "old", "", OptionalInt.of(2700), "B3", "", "", "", "inv", OptionalDouble.empty(),
                OptionalDouble.of(3), Optional.empty());
        Reel after = code("]d20109501101530003112607003111000050240LINEA-24~10AB-1~21S77").on(before, 2026);
        assertEquals(new Reel("R1", "Own", "LINEA-24", "09501101530003", OptionalInt.of(2700), "B3", "AB-1", "S77", "2026-07", "inv",
                OptionalDouble.of(5), OptionalDouble.of(3), Optional.empty()), after);
    }
}
