package covewalk.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.colour.Towards;
import covewalk.survey.Limits;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JudgeTest {

    private static final double QUIET = 0.0003;

    private static Walk twoReels(long seed, double steps) {
        return new Walk(seed, QUIET).reel(0, 5, "L1").reel(5, 10, "L2")
                .read(0.5, 4.5, 0.5, 2, at -> 0).read(5.5, 9.5, 0.5, 2, at -> steps);
    }

    @Test
    void callsAJointBeyondThatIs() {
        JudgedJoint joint = twoReels(3, 3.5).judged().joints().get(0);

        assertEquals(Verdict.BEYOND, joint.verdict());
        assertEquals(3.5, joint.difference().orElseThrow().steps(), 0.4);
        assertEquals(List.of("R1", "R2"), joint.reels());
        assertEquals(5, joint.positionM());
        assertEquals(0, joint.settle().readings().orElseThrow());
        assertEquals(Towards.Along.WARMER, joint.difference().orElseThrow().towards().along());
        assertEquals(1, joint.difference().orElseThrow().luxRatio().orElseThrow(), 1e-9);
    }

    @Test
    void callsAJointWithinThatIs() {
        CoveJudgement cove = twoReels(2, 0.6).judged();

        assertEquals(Verdict.WITHIN, cove.joints().get(0).verdict());
        assertEquals(List.of(), cove.faults());
    }

    @Test
    void leavesAJointNearTheLimitUnsettledAndSaysWhatWouldSettleIt() {
        CoveJudgement cove = new Walk(3, QUIET).reel(0, 5, "L1").reel(5, 10, "L2")
                .read(3, 4, 0.5, 1, at -> 0).read(5.5, 6.5, 0.5, 1, at -> 2.4).judged();

        assertEquals(Verdict.UNSETTLED, cove.joints().get(0).verdict());
        assertEquals(FaultKind.JOINT, cove.faults().get(0).kind());
        Settle settle = cove.joints().get(0).settle();
        assertTrue(settle.readings().isEmpty() ? settle.whyNot() == Settle.WhyNot.NEAR_THE_LIMIT
                : settle.readings().getAsInt() > 0);
    }

    /** One colour typed 40 steps off among repeats: more readings would have to outweigh it, and the limit has no part in it. */
    @Test
    void asksForTheSlipWhereOneReadingKeepsAJointOpen() {
        JudgedJoint joint = new Walk(5, QUIET).reel(0, 5, "L1").reel(5, 10, "L2")
                .read(0.5, 4.5, 1, 2, at -> 0).read(5.5, 9.5, 1, 2, at -> 5).add(4.5, 40, 500, 1).judged().joints().get(0);

        assertEquals(Verdict.UNSETTLED, joint.verdict());
        assertEquals(Settle.WhyNot.SCATTER, joint.settle().whyNot());
    }

    @Test
    void tellsAJointWithoutReadingsFromOneThatIsWithin() {
        JudgedJoint joint = new Walk(4, QUIET).reel(0, 5, "L1").reel(5, 10, "L1")
                .read(0.5, 4.5, 0.5, 1, at -> 0).judged().joints().get(0);

        assertEquals(Verdict.NOT_READ, joint.verdict());
        assertEquals(Settle.WhyNot.NOT_READ, joint.settle().whyNot());
        assertTrue(joint.difference().isEmpty());
    }

    @Test
    void leavesOutReadingsThatMixBothReels() {
        Walk walk = twoReels(5, 3.5).add(4.95, 1.7, 500, 1).add(5.05, 1.8, 500, 1);
        walk.smearM = 0.05;

        JudgedJoint joint = walk.judged().joints().get(0);

        assertEquals(Verdict.BEYOND, joint.verdict());
        assertEquals(List.of(Note.of(Note.Kind.LEFT_OUT_NEAR_JOINT, 2)), joint.notes());
    }

    @Test
    void findsAChangeInsideAReel() {
        CoveJudgement cove = new Walk(6, QUIET).reel(0, 10, "L1").read(0.5, 4.5, 0.5, 1, at -> 0)
                .read(5, 9.5, 0.5, 1, at -> 4).judged();

        Fault fault = cove.faults().get(0);
        assertEquals(FaultKind.MID_REEL, fault.kind());
        assertEquals(Verdict.BEYOND, fault.verdict());
        assertEquals(4.5, fault.fromM());
        assertEquals(5, fault.toM());
        assertEquals(Hint.SPLICE_OR_SURFACE, fault.hint());
        assertEquals(2, cove.stretches().size());
        assertEquals(1, cove.faults().size());
    }

    @Test
    void tellsASteadyDriftFromASplice() {
        Walk walk = new Walk(7, QUIET).reel(0, 10, "L1");
        for (double at = 0.5; at < 10; at += 0.5) {
            walk.add(at, 0.4 * at, 600 - 20 * at, 1);
        }
        CoveJudgement cove = walk.judged();

        assertEquals(1, cove.faults().size());
        Fault fault = cove.faults().get(0);
        assertEquals(FaultKind.DRIFT, fault.kind());
        assertEquals(4, fault.difference().steps(), 0.5);
        assertEquals(Hint.VOLTAGE_DROP, fault.hint());
    }

    @Test
    void setsOneWildReadingAsideAndAsksForItAgain() {
        CoveJudgement cove = twoReels(8, 0.2).add(2.25, 6, 500, 1).judged();

        assertEquals(1, cove.faults().size());
        assertEquals(FaultKind.LONE_STATION, cove.faults().get(0).kind());
        assertEquals(2.25, cove.faults().get(0).positionM());
        assertEquals(Verdict.WITHIN, cove.joints().get(0).verdict());
    }

    @Test
    void judgesWhereAClosedCoveMeetsItself() {
        Walk walk = new Walk(9, QUIET).reel(0, 5, "L1").reel(5, 10, "L1").reel(10, 15, "L2")
                .read(0.5, 4.5, 0.5, 2, at -> 0).read(5.5, 9.5, 0.5, 2, at -> 1).read(10.5, 14.5, 0.5, 2, at -> 4);
        walk.closed = true;

        JudgedJoint closing = walk.judged().joints().get(2);

        assertTrue(closing.joint().closing());
        assertEquals(List.of("R3", "R1"), closing.reels());
        assertEquals(15, closing.positionM());
        assertEquals(Verdict.BEYOND, closing.verdict());
    }

    @Test
    void leavesAPlacementNearTheTargetsLimitUnsettledForTheMetersError() {
        Walk walk = new Walk(10, QUIET).reel(0, 5, "L1").read(0.5, 4.5, 0.5, 2, at -> 2);
        walk.targetSteps = OptionalDouble.of(3);

        Fault fault = walk.judged().faults().get(0);

        assertEquals(FaultKind.OFF_TARGET, fault.kind());
        assertEquals(Verdict.UNSETTLED, fault.verdict());
        assertEquals(Settle.WhyNot.METER_ERROR, fault.settle().whyNot());
    }

    /** Two decimals of x, y leave open some five steps: that both sides read the same says nothing. */
    @Test
    void takesEqualCoarseDigitsForNoProofOfEqualColours() {
        Walk walk = new Walk(14, QUIET);
        walk.decimals = 2;
        walk.reel(0, 5, "L1").reel(5, 10, "L2").read(0.5, 4.5, 0.5, 1, at -> 0).read(5.5, 9.5, 0.5, 1, at -> 0);

        assertEquals(Verdict.UNSETTLED, walk.judged().joints().get(0).verdict());
    }

    @Test
    void restsOnTheDeclaredRepeatabilityWithOneReadingASide() {
        JudgedJoint joint = new Walk(11, QUIET).reel(0, 5, "L1").reel(5, 10, "L1").add(4, 0, 500, 1).add(6, 4, 500, 1)
                .judged().joints().get(0);

        assertTrue(joint.notes().contains(Note.of(Note.Kind.RESTS_ON_DECLARED)));
        assertEquals(Verdict.BEYOND, joint.verdict());
    }

    @Test
    void asksMoreOfAVerdictThatWasSeenBefore() {
        Walk first = new Walk(12, QUIET).reel(0, 5, "L1").reel(5, 10, "L2").add(4, 0, 500, 1).add(6, 2.75, 500, 1);
        Walk second = new Walk(12, QUIET).reel(0, 5, "L1").reel(5, 10, "L2").add(4, 0, 500, 1).add(6, 2.75, 500, 2);

        assertEquals(first.judged().joints().get(0).confidence(), second.judged().joints().get(0).confidence());
        assertEquals(2, second.judged().joints().get(0).rounds());
    }

    /** Truth: joints exactly at the limit of 2 steps; noise as declared, each joint judged from its own survey. */
    @Test
    void isWrongAtMostAtTheErrorRateAtTheLimit() {
        int beyond = 0;
        int within = 0;
        int trials = 400;
        for (int seed = 0; seed < trials; seed++) {
            Verdict verdict = twoReels(1000 + seed, 2).judged().joints().get(0).verdict();
            beyond += verdict == Verdict.BEYOND ? 1 : 0;
            within += verdict == Verdict.WITHIN ? 1 : 0;
        }
        double allowed = trials * 0.05 + 3 * Math.sqrt(trials * 0.05 * 0.95); // three standard errors
        assertTrue(beyond <= allowed, "beyond: " + beyond);
        assertTrue(within <= allowed, "within: " + within);
    }

    /** Truth: one colour over a whole cove of three reels. */
    @Test
    void showsAChangeInFewCovesWithoutOne() {
        int alarms = 0;
        int trials = 300;
        for (int seed = 0; seed < trials; seed++) {
            CoveJudgement cove = new Walk(5000 + seed, QUIET).reel(0, 5, "L1").reel(5, 10, "L1").reel(10, 15, "L1")
                    .read(0.25, 14.75, 0.5, 1, at -> 0).judged();
            boolean changed = cove.stretches().size() > 3
                    || cove.stretches().stream().anyMatch(stretch -> stretch.line().drifts() || !stretch.aside().isEmpty());
            alarms += changed ? 1 : 0;
        }
        assertTrue(alarms <= trials * 0.05 + 3 * Math.sqrt(trials * 0.05 * 0.95), "alarms: " + alarms);
    }

    @Test
    void holdsTheRateForTheWholeSurveyWhereAskedTo() {
        Walk walk = new Walk(13, QUIET).reel(0, 2, "L1");
        for (int i = 1; i < 40; i++) {
            walk.reel(2 * i, 2 * i + 2, "L1");
        }
        walk.read(0.5, 79.5, 1, 1, at -> (int) (at / 2) % 2 == 0 ? 0 : 2.55);
        long alone = walk.judged().count(Verdict.BEYOND);
        walk.errorPer = Limits.ErrorPer.SURVEY;

        long together = walk.judged().count(Verdict.BEYOND);

        assertTrue(alone > 0 && together < alone, alone + " alone, " + together + " together");
    }
}
