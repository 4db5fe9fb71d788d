package covewalk.survey.file.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SignificantDigitsTest {

    @ParameterizedTest(name = "{3}")
    @CsvSource(textBlock = """
        # value,            digits, text,            why
        0.458,              6,      0.458000,        noughts at the end are digits too
        2712.345678,        6,      2712.35,         digits are counted and not decimals
        2712.345678,        4,      2712,            none behind the point
        2712.345678,        3,      2710,            fewer than stand before the point
        0.00012345678,      6,      0.000123457,     noughts in front are no digits
        -0.00012345678,     6,      -0.000123457,    below the locus
        0.99999996,         6,      1.00000,         a carry gives no digit too many
        9.9999996,          6,      10.0000,         a carry over the point
        999999.7,           6,      1000000,         a carry past all digits
        0.5,                1,      0.5,             one digit
        0,                  6,      0,               nothing
        -0.0,               6,      0,               less than nothing
        1e-13,              6,      0,               beyond the twelfth decimal
        0.000000000001,     6,      0.000000000001,  the twelfth decimal itself
        0.0000001234567894, 6,      0.000000123457,  as many digits as twelve decimals leave
        0.125,              2,      0.12,            a tie goes to the even digit
        0.375,              2,      0.38,            a tie goes to the even digit
        1.005,              3,      1.00,            the double lies below the tie that its digits show
        20000,              12,     20000.0000000,   the hottest CCT
        """)
    void writesPlainNotation(double value, int digits, String text, String why) {
        assertEquals(text, written(value, digits), why);
    }

    /** BigDecimal holds the exact value of the double and rounds it once: the outside truth here. */
    @ParameterizedTest(name = "{0} digits")
    @ValueSource(ints = {1, 2, 3, 6, 9, 12})
    void roundsAsBigDecimalDoes(int digits) {
        Random random = new Random(digits);
        for (int i = 0; i < 5_000; i++) {
            double value = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(12) - 6);
            assertEquals(exactly(value, digits), written(value, digits), () -> Double.toString(value));
        }
    }

    /** Numbers that end in 5 just behind the last digit are where a single multiplication would go wrong. */
    @Test
    void roundsAsBigDecimalDoesNextToTies() {
        Random random = new Random(11);
        for (int i = 0; i < 5_000; i++) {
            double tie = (random.nextInt(900_000) + 100_000 + 0.5) / 1e6;
            for (double value : new double[] {tie, Math.nextUp(tie), Math.nextDown(tie)}) {
                assertEquals(exactly(value, 6), written(value, 6), () -> Double.toString(value));
            }
        }
    }

    @Test
    void writesNoMoreThanTwelveDigits() {
        assertThrows(IllegalArgumentException.class, () -> new SignificantDigits(13));
        assertThrows(IllegalArgumentException.class, () -> new SignificantDigits(0));
    }

    private static String exactly(double value, int digits) {
        BigDecimal exact = new BigDecimal(value);
        BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
        if (rounded.scale() > SignificantDigits.MOST) {
            rounded = exact.setScale(SignificantDigits.MOST, RoundingMode.HALF_EVEN);
        }
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private static String written(double value, int digits) {
        RowBuffer out = new RowBuffer();
        new SignificantDigits(digits).write(value, out);
        return out.text();
    }
}
