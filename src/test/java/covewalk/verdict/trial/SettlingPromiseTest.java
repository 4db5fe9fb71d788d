package covewalk.verdict.trial;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** That as many further readings as are asked for settle a joint in about nine cases of ten, were it as it seems. */
class SettlingPromiseTest {

    private static final double ABOUT_NINE_IN_TEN = 0.85;

    static List<JointCase> kept() {
        return RoundTrials.differencesThatAskForMore();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kept")
    void asManyAsAskedForSettleIt(JointCase joint) {
        assertSettled(RoundTrials.asAskedFor(joint, 300));
    }

    @Tag("long")
    @ParameterizedTest(name = "{0}")
    @MethodSource("kept")
    void asManyAsAskedForSettleItInManyTrials(JointCase joint) {
        assertSettled(RoundTrials.asAskedFor(joint, 3000));
    }

    private static void assertSettled(RoundTrials.Asked asked) {
        assertTrue(asked.asked() > 20, asked + ": too few to say");
        assertTrue(asked.settled() >= ABOUT_NINE_IN_TEN - 3 * Shares.standardError(ABOUT_NINE_IN_TEN, asked.asked()),
                asked.toString());
    }
}
