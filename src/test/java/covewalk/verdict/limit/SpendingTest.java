package covewalk.verdict.limit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SpendingTest {

    @Test
    void allRoundsTogetherNeverSpendMoreThanTheRate() {
        double spent = 0;
        for (int round = 1; round <= 1000; round++) {
            spent += RoundShares.of(round);
        }
        assertTrue(spent <= 1 + 1e-12);
        assertEquals(0.8, RoundShares.of(1));
    }

    /** The example of the encyclopedia's article on the Holm-Bonferroni method (from memory). */
    @Test
    void holmStopsAtTheFirstThatDoesNotStand() {
        assertArrayEquals(new boolean[] {true, false, false, true},
                Holm.stands(new double[] {0.01, 0.04, 0.03, 0.005}, 0.05));
    }

    @Test
    void holmTakesNothingFromNothing() {
        assertArrayEquals(new boolean[0], Holm.stands(new double[0], 0.05));
    }
}
