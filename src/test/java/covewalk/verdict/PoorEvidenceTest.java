package covewalk.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import covewalk.colour.StepRule;
import covewalk.survey.Limits;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Surveys with next to nothing in them, and limits that cannot be. */
class PoorEvidenceTest {

    private static Walk twoReels() {
        return new Walk(1, 0).reel(0, 4, "L1").reel(4, 8, "L1");
    }

    private static Verdict joint(Walk walk) {
        return walk.judged().joints().get(0).verdict();
    }

    @Test
    void withoutAnyReadingNothingIsRead() {
        CoveJudgement cove = twoReels().judged();

        assertEquals(Verdict.NOT_READ, cove.joints().get(0).verdict());
        assertEquals(List.of(), cove.stretches());
        assertEquals(List.of(), cove.faults());
    }

    @Test
    void oneReadingJudgesNoJoint() {
        assertEquals(Verdict.NOT_READ, joint(twoReels().add(1, 0, 500, 1)));
    }

    @Test
    void aReelWithoutReadingsLeavesItsJointUnread() {
        assertEquals(Verdict.NOT_READ, joint(twoReels().read(0.5, 3.5, 0.5, 2, at -> 0)));
    }

    @Test
    void readingsThatAreAllTheSameAreWithin() {
        CoveJudgement cove = twoReels().read(0.5, 7.5, 1, 3, at -> 0).judged();

        assertEquals(Verdict.WITHIN, cove.joints().get(0).verdict());
        assertEquals(0, cove.joints().get(0).difference().orElseThrow().steps(), 1e-9);
        assertEquals(2, cove.stretches().size());
    }

    @ParameterizedTest(name = "repeatability {0}")
    @ValueSource(doubles = {0, -0.0003, Double.NaN, Double.POSITIVE_INFINITY})
    void aMeterWithoutNoiseCannotBe(double repeatabilityUv) {
        Walk walk = twoReels().add(1, 0, 500, 1).add(7, 4, 500, 1);
        walk.declaredUv = repeatabilityUv;

        assertThrows(IllegalArgumentException.class, walk::survey);
    }

    /** Nine steps apart at each place: nobody knows what such a meter shows, whatever was declared for it. */
    @Test
    void repeatsThatDifferWildlySettleNothing() {
        Walk walk = twoReels().add(1, 0, 500, 1).add(1, 9, 500, 1).add(1, -9, 500, 1)
                .add(7, 0, 500, 1).add(7, -4.5, 500, 1).add(7, 4.5, 500, 1);

        assertEquals(Verdict.UNSETTLED, joint(walk));
    }

    /** Four readings of few digits, all the same: standard uncertainty over a step, limit 2. */
    @Test
    void nothingIsWithinALimitThatItsUncertaintyNearlyFills() {
        Walk walk = twoReels().add(1, 0, 500, 1).add(7, 0, 500, 1);
        walk.declaredUv = 0.0009;

        assertEquals(Verdict.UNSETTLED, joint(walk));
    }

    @ParameterizedTest(name = "limit {0}, error rate {1}")
    @CsvSource(textBlock = """
        # limit, error rate: each pair has one that cannot be
        0, 0.05
        -1, 0.05
        1000, 0.05
        NaN, 0.05
        Infinity, 0.05
        2, 0
        2, 0.5
        2, 1
        2, NaN
        """)
    void limitsThatCannotBeAreRefused(double steps, double errorRate) {
        assertThrows(IllegalArgumentException.class, () -> new Limits(steps, OptionalDouble.empty(), "", StepRule.UV_CIRCLE,
                errorRate, Limits.ErrorPer.JOINT));
    }
}
