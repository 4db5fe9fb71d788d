package covewalk.verdict.trial;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is seen inside reels whose course of colour is known. Each share has three standard errors of grace. */
class ReelPromisesTest {

    private static final double FALSE_ALARMS = 0.05;
    private static final int QUICK = 150;
    private static final int LONG = 3000;

    static List<ReelCase> withoutAChange() {
        return ReelTrials.withoutAChange();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("withoutAChange")
    void showsAChangeInFewCovesWithoutOne(ReelCase reel) {
        assertTrue(reel.anything(QUICK) <= Shares.allowed(FALSE_ALARMS, QUICK), reel.name());
    }

    @Tag("long")
    @ParameterizedTest(name = "{0}")
    @MethodSource("withoutAChange")
    void showsAChangeInFewOfManyCovesWithoutOne(ReelCase reel) {
        assertTrue(reel.anything(LONG) <= Shares.allowed(FALSE_ALARMS, LONG), reel.name());
    }

    @ParameterizedTest(name = "a change of {0} steps")
    @ValueSource(doubles = {1.5, 2, 3, 5})
    void placesAChangeWhereItIs(double steps) {
        assertRangeHolds(ReelTrials.change(steps, QUICK));
    }

    @Tag("long")
    @ParameterizedTest(name = "a change of {0} steps")
    @ValueSource(doubles = {1, 1.5, 2, 3, 5})
    void placesAChangeWhereItIsInManyTrials(double steps) {
        assertRangeHolds(ReelTrials.change(steps, LONG));
    }

    /** Not found at all, the range would promise nothing: 3 steps are found in 19 coves of 20 (measured, 97 %). */
    @Test
    void findsAChangeOfThreeSteps() {
        assertTrue(ReelTrials.change(3, QUICK).found() >= 0.95 - 3 * Shares.standardError(0.95, QUICK));
    }

    /** Four steps over 5 m are plain to any eye; nothing else may be made of them in more than one cove of twenty. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("plain")
    void tellsADriftFromAChangeAndFromAWildReading(ReelCase reel) {
        Map<ReelCase.Seen, Double> shares = reel.shares(QUICK);

        assertTrue(shares.get(reel.truth()) >= 0.95 - 3 * Shares.standardError(0.95, QUICK), reel.name() + shares);
    }

    static List<ReelCase> plain() {
        return ReelTrials.plain();
    }

    private static void assertRangeHolds(ReelTrials.Placed placed) {
        double least = 0.95 - 3 * Shares.standardError(0.95, Math.max(1, placed.changes()));
        assertTrue(placed.held() >= least, placed.toString());
    }
}
