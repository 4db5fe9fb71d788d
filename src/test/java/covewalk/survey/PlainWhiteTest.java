package covewalk.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The short look says no more and no less than the check in full. */
class PlainWhiteTest {

    private static final int TRIED = 20_000;

    @ParameterizedTest(name = "{0}")
    @CsvSource({"cct, 900, 9000, -0.06, 0.06", "xy, -0.1, 0.8, -0.1, 0.8", "xy, 0.3, 0.5, 0.3, 0.5",
        "uv, -0.1, 0.7, -0.1, 0.7", "uv, 0.18, 0.3, 0.45, 0.56"})
    void agreesWithTheCheckOfOnePair(String pair, double least1, double most1, double least2, double most2) {
        Random random = new Random(1);
        int plain = 0;
        for (int i = 0; i < TRIED; i++) {
            TypedColour colour = TypedColourCheckTest.colour(pair, typed(random, least1, most1), typed(random, least2, most2));
            List<Problem> problems = TypedColourCheck.problems(colour);
            assertEquals(problems.isEmpty(), PlainWhite.is(colour), () -> colour + " " + problems);
            plain += problems.isEmpty() ? 1 : 0;
        }
        assertTrue(plain > 0 && plain < TRIED, plain + " of " + TRIED + " are plain: the numbers tried show only one side");
    }

    private static String typed(Random random, double least, double most) {
        int decimals = most > 1 ? random.nextInt(2) : 3 + random.nextInt(3);
        return String.format(Locale.ROOT, "%." + decimals + "f", least + random.nextDouble() * (most - least));
    }

    @Test
    void leavesSeveralPairsToTheCheckInFull() {
        TypedColour both = new TypedColour(Optional.empty(), TypedColourCheckTest.colour("xy", "0.4578", "0.4101").xy(),
                TypedColourCheckTest.colour("uv", "0.2614", "0.5268").uvPrime());
        assertFalse(PlainWhite.is(both));
    }
}
