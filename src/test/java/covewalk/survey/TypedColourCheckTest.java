package covewalk.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody sees who types a colour. R: refused, W: taken with a warning. */
class TypedColourCheckTest {

    private static final String TAKEN = " Look at the meter again; it is taken as typed.";

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        # pair | first | second | what is seen
        cct | 27     | 0.0034 | R cct_k: 27 K is outside 1000 to 20000 K; a white is some 1800 to 8000 K. Look at the meter again.
        cct | 27000  | 0.0034 | R cct_k: 27000 K is outside 1000 to 20000 K; a white is some 1800 to 8000 K. Look at the meter again.
        cct | 999.9  | 0.0000 | R cct_k: 999.9 K is outside 1000 to 20000 K; a white is some 1800 to 8000 K. Look at the meter again.
        cct | 1000   | 0.0000 | W cct_k: 1000 K is unusual: a white is some 1800 to 8000 K. Look at the meter again; it is taken as typed.
        cct | 20000  | 0.0000 | W cct_k: 20000 K is unusual: a white is some 1800 to 8000 K. Look at the meter again; it is taken as typed.
        cct | 2700   | 0.0340 | R duv: No light has 2700 K with Duv 0.0340; a white has some -0.02 to 0.02. Look at the decimals again.
        cct | 4000   | 0.0340 | W duv: 0.0340 is unusual: a white has some -0.02 to 0.02. Look at the decimals again; it is taken as typed.
        cct | 2700   | -0.0340 | W duv: -0.0340 is unusual: a white has some -0.02 to 0.02. Look at the decimals again; it is taken as typed.
        cct | 2700   | 0.34   | R duv: 0.34 is outside -0.05 to 0.05; a white has some -0.02 to 0.02. Look at the meter again.
        cct | 2700   | 34     | R duv: 34 is outside -0.05 to 0.05. Duv is a small fraction such as 0.0034; some meters show it in thousandths or per cent. Look at the meter again.
        cct | 2700   | 0.003  | W duv: A Duv to three decimals costs about half a step. Enter four decimals if the meter shows them.
        cct | 1000   | 0.0300 | R duv: No light has 1000 K with Duv 0.0300; a white has some -0.02 to 0.02. Look at the decimals again.
        xy  | 1.2    | 0.4100 | R x: 1.2 cannot be: it lies between 0 and 1. Look at the meter again.
        xy  | 0.4580 | -0.41  | R y: -0.41 cannot be: it lies between 0 and 1. Look at the meter again.
        xy  | 0.4580 | 0      | R y: 0 cannot be: it lies between 0 and 1. Look at the meter again.
        xy  | 0.7000 | 0.4100 | R y: x 0.7000 and y 0.4100 together exceed 1, which no colour does. Look at the meter again.
        xy  | 0.0500 | 0.0500 | R x: No light has this colour. Look at the meter again.
        xy  | 0.3000 | 0.6000 | R x: This colour is too far from white to have a CCT: its Duv is beyond 0.05. Look at the meter again.
        xy  | 0.6900 | 0.3090 | R x: This colour is redder than a white of 1000 K. Look at the meter again.
        xy  | 0.2450 | 0.2450 | R x: This colour is bluer than a white of 20000 K. Look at the meter again.
        xy  | 0.458  | 0.4101 | W x: x and y to three decimals cost about half a step. Enter four decimals if the meter shows them.
        uv  | 0.2600 | 1.5    | R v_prime: 1.5 cannot be: it lies between 0 and 1. Look at the meter again.
        uv  | 0.260  | 0.5300 | W u_prime: u' and v' to three decimals cost about half a step. Enter four decimals if the meter shows them.
        """)
    void saysWhatIsWrong(String pair, String first, String second, String seen) {
        assertEquals(seen, seen(colour(pair, first, second)));
    }

    @Test
    void sees_x_and_y_the_other_way_round() {
        assertEquals("W x: This is unusual for a white: 3870 K with Duv 0.0267." + TAKEN
                + "\nW x: With x and y the other way round this would be a usual white. Look at the meter again.",
                seen(colour("xy", "0.4100", "0.4600")));
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        # the last of the sentences seen
        xy | 0.2600 | 0.5270 | W x: As u' and v' these numbers would be a usual white. Look which of the two the meter shows.
        uv | 0.5270 | 0.2600 | W u_prime: With u' and v' the other way round this would be a usual white. Look at the meter again.
        uv | 0.2600 | 0.3513 | W v_prime: With v' half as large again this would be a usual white: v of the older diagram (CIE 1960) is two thirds of v'. Look which of the two the meter shows.
        uv | 0.4578 | 0.4101 | W u_prime: As x and y these numbers would be a usual white. Look which of the two the meter shows.
        """)
    void suspectsNumbersOfAnotherKind(String pair, String first, String second, String last) {
        List<String> lines = seen(colour(pair, first, second)).lines().toList();
        assertEquals(last, lines.get(lines.size() - 1));
        assertTrue(lines.size() > 1, "a suspicion stands behind what raised it: " + lines);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cct 2700 0.0034", "cct 6500 -0.0012", "xy 0.4578 0.4101", "xy 0.3127 0.3290", "uv 0.2597 0.5263"})
    void hasNothingToSayOfAUsualWhite(String typed) {
        String[] words = typed.split(" ");
        assertEquals("", seen(colour(words[0], words[1], words[2])));
    }

    /** x 0.4578, y 0.4101 is u' 0.26139, v' 0.52685 by the CIE 15 formulas 4x/(3 - 2x + 12y), 9y/(3 - 2x + 12y). */
    @ParameterizedTest(name = "u'' {0} v'' {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
        0.2614 | 0.5268 | ~~
        0.2614 | 0.5269 | ~~
        0.2618 | 0.5269 | W u_prime: u', v' differ by 0.4 steps from x, y, more than their digits allow; x, y count. Look whether all came from one reading.
        0.2614 | 0.5305 | W u_prime: u', v' differ by 3.3 steps from x, y, more than their digits allow; x, y count. Look whether all came from one reading.
        """)
    void comparesPairsByTheirDigits(String u, String v, String seen) {
        TypedColour both = new TypedColour(Optional.empty(), colour("xy", "0.4578", "0.4101").xy(),
                colour("uv", u, v).uvPrime());
        assertEquals(seen, seen(both));
    }

    static TypedColour colour(String pair, String first, String second) {
        Typed one = Typed.of(first).orElseThrow();
        Typed two = Typed.of(second).orElseThrow();
        return switch (pair) {
            case "cct" -> TypedColour.ofCctDuv(one, two);
            case "xy" -> TypedColour.ofXy(one, two);
            default -> TypedColour.ofUvPrime(one, two);
        };
    }

    private static String seen(TypedColour colour) {
        return Seen.all(TypedColourCheck.problems(colour));
    }
}
