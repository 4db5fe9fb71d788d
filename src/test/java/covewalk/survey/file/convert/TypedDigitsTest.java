package covewalk.survey.file.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypedDigitsTest {

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
        0.4580                      | 0.458
        0,4580                      | 0.458
        -0.0012                     | -0.0012
        +2712                       | 2712
        .458                        | 0.458
        2712.                       | 2712
        1.2e-3                      | 0.0012
        0.45801234567890123456789   | 0.45801234567890126
        1,234.5                     | NaN
        1.2.3                       | NaN
        -----                       | NaN
        -                           | NaN
        .                           | NaN
        2712 K                      | NaN
        0x10                        | NaN
        NaN                         | NaN
        1e999                       | NaN
        """)
    void readsDigitsAndNothingElse(String cell, double value) {
        assertEquals(value, read(cell));
    }

    /** Double.parseDouble rounds correctly: the outside truth here. */
    @Test
    void roundsAsTheLibraryDoes() {
        Random random = new Random(3);
        for (int i = 0; i < 20_000; i++) {
            String cell = String.format(Locale.ROOT, "%." + random.nextInt(18) + "f", random.nextDouble() * Math.pow(10, random.nextInt(6)));
            assertEquals(Double.parseDouble(cell), read(cell), cell);
        }
    }

    private static double read(String cell) {
        byte[] bytes = cell.getBytes(StandardCharsets.ISO_8859_1);
        return TypedDigits.read(bytes, 0, bytes.length);
    }
}
