package covewalk.verdict.trial;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a verdict promises, held against joints whose truth is known. Each share has three standard errors of grace. */
class VerdictPromisesTest {

    private static final double ERROR_RATE = 0.05;
    private static final int QUICK = 160;
    private static final int LONG = 6000;

    static List<JointCase> atTheLimit() {
        return JointTrials.atTheLimit();
    }

    static List<JointCase> notKeptYet() {
        return JointTrials.notKeptYet();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("atTheLimit")
    void callsFewJointsAtTheLimitAnything(JointCase joint) {
        assertSeldomWrong(joint.shares(joint.trials(QUICK)), joint.name());
    }

    @Tag("long")
    @ParameterizedTest(name = "{0}")
    @MethodSource("atTheLimit")
    void callsFewJointsAtTheLimitAnythingInManyTrials(JointCase joint) {
        assertSeldomWrong(joint.shares(joint.trials(LONG)), joint.name());
    }

    /** Fails when a case is mended, so that it moves to the kept ones. */
    @Tag("long")
    @ParameterizedTest(name = "{0}")
    @MethodSource("notKeptYet")
    void knowsWhereThePromiseIsNotKeptYet(JointCase joint) {
        Shares shares = joint.shares(LONG);
        double worse = Math.max(shares.beyondShare(), shares.withinShare());

        assertTrue(worse > Shares.allowed(ERROR_RATE, LONG), joint.name() + " is kept now: " + worse);
    }

    @Test
    void isSeldomWrongOverAllRoundsOfReadingUntilSettled() {
        for (JointCase first : RoundTrials.readAgain()) {
            for (boolean newPlaces : new boolean[] {false, true}) {
                assertSeldomWrong(RoundTrials.untilSettled(first, newPlaces, 1, QUICK), first.name() + ", in rounds");
            }
        }
    }

    @Tag("long")
    @Test
    void isSeldomWrongOverAllRoundsInManyTrials() {
        for (JointCase first : RoundTrials.readAgain()) {
            for (boolean newPlaces : new boolean[] {false, true}) {
                assertSeldomWrong(RoundTrials.untilSettled(first, newPlaces, 1, LONG), first.name() + ", in rounds");
                assertSeldomWrong(RoundTrials.untilSettled(first, newPlaces, 3, LONG), first.name() + ", threefold");
            }
        }
    }

    /** Truth: 40 joints of one survey, each at the limit. */
    @Test
    void isSeldomWrongEvenOnceInASurveyThatAsksForThat() {
        assertTrue(SurveyTrials.anyWrong(QUICK) <= Shares.allowed(ERROR_RATE, QUICK));
    }

    @Tag("long")
    @Test
    void isSeldomWrongEvenOnceInManySurveys() {
        assertTrue(SurveyTrials.anyWrong(LONG / 2) <= Shares.allowed(ERROR_RATE, LONG / 2));
    }

    @Test
    void isSeldomWrongAboutTargetsAndClaims() {
        for (JointCase reel : TargetTrials.atTheLimit()) {
            assertSeldomWrong(TargetTrials.fromTarget(reel, QUICK), reel.name() + ", from the target");
            assertSeldomWrong(TargetTrials.fromClaim(reel, QUICK), reel.name() + ", from the claim");
        }
    }

    @Test
    @Tag("long")
    void isSeldomWrongAboutTargetsAndClaimsInManyTrials() {
        for (JointCase reel : TargetTrials.atTheLimit()) {
            assertSeldomWrong(TargetTrials.fromTarget(reel, LONG), reel.name() + ", from the target");
            assertSeldomWrong(TargetTrials.fromClaim(reel, LONG), reel.name() + ", from the claim");
        }
    }

    private static void assertSeldomWrong(Shares shares, String name) {
        double allowed = Shares.allowed(ERROR_RATE, shares.trials());
        assertTrue(shares.beyondShare() <= allowed, name + ": beyond in " + shares.beyondShare());
        assertTrue(shares.withinShare() <= allowed, name + ": within in " + shares.withinShare());
    }
}
