package covewalk.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # as typed | digits | value | one unit of the last digit
        0.4580   | 0.4580  | 0.458   | 0.0001
        0.458    | 0.458   | 0.458   | 0.001
        0,0034   | 0.0034  | 0.0034  | 0.0001
        2700     | 2700    | 2700    | 1
        -0.0012  | -0.0012 | -0.0012 | 0.0001
        \u22120.0012 | -0.0012 | -0.0012 | 0.0001
        1.5e3    | 1.5e3   | 1500    | 100
        .5       | .5      | 0.5     | 0.1
        """)
    void keepsTheDigits(String typed, String digits, double value, double resolution) {
        Typed number = Typed.of(" " + typed + " ").orElseThrow();
        assertEquals(digits, number.text());
        assertEquals(value, number.value());
        assertEquals(resolution, number.resolution(), 1e-12 * resolution);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "1.234,5", "1,2,3", "1.2.3", "NaN", "Infinity", "0x1p3", "1d", "1e999", "-", "over",
        "12345678901234567890123456789012345678901"})
    void readsNoNumberWhereThereIsNone(String typed) {
        assertTrue(Typed.of(typed).isEmpty());
    }
}
