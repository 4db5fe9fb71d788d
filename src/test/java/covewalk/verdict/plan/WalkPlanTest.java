package covewalk.verdict.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.verdict.Judge;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.plan.CovePlan.WhyNothing;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WalkPlanTest {

    @ParameterizedTest(name = "{3}")
    @CsvSource(textBlock = """
        # true steps, verdict, at least, why
        3,            BEYOND,  0.873,    'limit 2 and one step; 90 % less two standard deviations of 500 joints'
        1,            WITHIN,  0.873,    'limit 2 less one step'
        """)
    void aWalkAsPlannedSettlesNineJointsOfTen(double steps, Verdict verdict, double atLeast, String why) {
        int settled = 0;
        int joints = 0;
        for (int trial = 0; trial < 100; trial++) {
            PlannedWalk walk = new PlannedWalk(20261005 + trial, 0.0003, 0.05);
            for (int reel = 0; reel < 6; reel++) {
                walk.reel(5, reel % 2 == 0 ? 0 : steps);
            }
            WalkPlan plan = WalkPlan.of(new Judge().judge(walk.survey(), List.of()));
            settled += new Judge().judge(walk.survey(), walk.read(plan)).coves().get(0).joints().stream()
                    .filter(joint -> joint.verdict() == verdict).count();
            joints += 5;
        }
        assertTrue(settled >= atLeast * joints, settled + " of " + joints);
    }

    @Test
    void stationsKeepClearOfJointsAndTheReferenceIsReadFirstNowAndThenAndLast() {
        CovePlan plan = cove(new PlannedWalk(1, 0.0003, 0.2).reel(5, 0).reel(5, 0).reel(5, 0).reel(5, 0));
        assertEquals(Stop.Kind.DARK, plan.stops().get(0).kind());
        assertEquals(Stop.Kind.REFERENCE, plan.stops().get(1).kind());
        assertEquals(Stop.Kind.REFERENCE, plan.stops().get(plan.stops().size() - 1).kind());
        int since = 0;
        for (Stop stop : plan.stops()) {
            since = stop.kind() == Stop.Kind.REFERENCE ? 0 : since + stop.readings();
            assertTrue(since <= 30, "20 to 30 readings between references: common practice, no source");
        }
        assertTrue(plan.stops().stream().filter(stop -> stop.kind() == Stop.Kind.WALK)
                .allMatch(stop -> Math.abs(stop.positionM() - 5 * Math.rint(stop.positionM() / 5)) > 0.4), plan.stops().toString());
    }

    @Test
    void aCoarseMeterIsToldWithWhatItCouldSettle() {
        PlannedJoint fine = cove(new PlannedWalk(1, 0.0003, 0).reel(5, 0).reel(5, 0)).joints().get(0);
        PlannedJoint coarse = cove(new PlannedWalk(1, 0.003, 0).reel(5, 0).reel(5, 0)).joints().get(0);
        assertEquals(PlannedJoint.Outlook.SETTLES, fine.outlook());
        assertEquals(PlannedJoint.Outlook.TOO_COARSE, coarse.outlook());
        // 0.003 is 2.73 steps: ten stations of three readings a side, with a scatter of 0.5, leave sqrt((2.73^2 / 3 + 0.25) / 5) = 0.74;
        // times 1.82 (Student's t of 95.75 %, 18 degrees) and 1.41 (normal, 92 %): 2.4
        assertEquals(2.4, coarse.settlesSteps().orElseThrow(), 0.1);
    }

    @Test
    void aSideShorterThanTheMeterSmearsCannotBeRead() {
        CovePlan plan = cove(new PlannedWalk(1, 0.0003, 0.2).reel(5, 0).reel(0.5, 0).reel(5, 0));
        assertEquals(PlannedJoint.Outlook.TOO_SHORT, plan.joints().get(0).outlook());
        assertTrue(plan.stops().stream().noneMatch(stop -> stop.kind() == Stop.Kind.WALK && stop.reel().equals("R2")));
    }

    @Test
    void whatIsSettledIsNotPlannedAgain() {
        PlannedWalk walk = new PlannedWalk(7, 0.0003, 0.05).reel(5, 0).reel(5, 6);
        WalkPlan first = WalkPlan.of(new Judge().judge(walk.survey(), List.of()));
        WalkPlan again = WalkPlan.of(new Judge().judge(walk.survey(), walk.read(first)));
        assertEquals(List.of(), again.coves().get(0).stops());
        assertEquals(PlannedJoint.Outlook.SETTLED, again.coves().get(0).joints().get(0).outlook());
    }

    private static Optional<WhyNothing> whyNothing(PlannedWalk walk, boolean read) {
        WalkPlan first = WalkPlan.of(new Judge().judge(walk.survey(), List.of()));
        return WalkPlan.of(new Judge().judge(walk.survey(), read ? walk.read(first) : List.of())).coves().get(0).whyNothing();
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(nullValues = "-", textBlock = """
        # reels of m, second reel off by steps, read, why nothing, why that
        '5 5',        0,                        false, -,         there is something to read
        '5 5',        6,                        true,  SETTLED,   the joint is far beyond the limit
        '5 5',        2,                        true,  READ,      a joint on the limit stays open after the whole plan
        '5',          0,                        true,  SETTLED,   a reel alone has no joint
        '0.1 0.1',    0,                        false, TOO_SHORT, nowhere does the meter see one reel alone
        '5 5 0.1',    6,                        true,  TOO_SHORT, 'the first joint is settled, the second has a short side'
        """)
    void saysWhyThereIsNothingToRead(String lengths, double steps, boolean read, WhyNothing why, String whyThat) {
        PlannedWalk walk = new PlannedWalk(7, 0.0003, 0.05);
        for (String length : lengths.split(" ")) {
            walk.reel(Double.parseDouble(length), walk.isEmpty() ? 0 : steps);
        }
        assertEquals(Optional.ofNullable(why), whyNothing(walk, read), whyThat);
    }

    @Test
    void aReadingCountsForOneStationHoweverNearTheNextOneLies() {
        PlannedWalk walk = new PlannedWalk(7, 0.0003, 0.05).reel(5, 0).reel(5, 2);
        CovePlan plan = cove(walk);
        List<Stop> stations = stations(plan);
        double nearest = IntStream.range(1, stations.size())
                .mapToDouble(i -> stations.get(i).positionM() - stations.get(i - 1).positionM()).min().orElseThrow();
        assertEquals(0.1, nearest, 1e-6, "stations near the joint lie as near to each other as a reading may lie off its station");
        for (Stop read : stations) {
            int left = readingsLeftAfterOneAt(walk, read.positionM());
            assertEquals(readings(stations) - 1, left, "after one reading at " + read.positionM() + " m");
        }
    }

    private static int readingsLeftAfterOneAt(PlannedWalk walk, double positionM) {
        return readings(stations(WalkPlan.of(new Judge().judge(walk.survey(), List.of(walk.readAt(positionM)))).coves().get(0)));
    }

    private static List<Stop> stations(CovePlan plan) {
        return plan.stops().stream().filter(stop -> stop.kind() == Stop.Kind.WALK).toList();
    }

    private static int readings(List<Stop> stops) {
        return stops.stream().mapToInt(Stop::readings).sum();
    }

    @ParameterizedTest(name = "{0} readings, {4}")
    @CsvSource(textBlock = """
        # readings, access, least, most, why
        100,        HEIGHT, 30,    60,   '100 to 200 an hour with a ladder: common practice, no source'
        100,        FLOOR,  20,    20,   '300 an hour from the floor: common practice, no source'
        """)
    void reckonsHowLongItTakes(int readings, Access access, int least, int most, String why) {
        assertEquals(least, access.leastMinutes(readings));
        assertEquals(most, access.mostMinutes(readings));
    }

    private static CovePlan cove(PlannedWalk walk) {
        return WalkPlan.of(new Judge().judge(walk.survey(), List.of())).coves().get(0);
    }
}
