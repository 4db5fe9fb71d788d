package covewalk.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Limits;
import covewalk.survey.Reading;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StationPairTest {

    private static final double QUIET = 0.0003;

    private static Walk twoStations(double steps, int repeats) {
        return new Walk(7, QUIET).reel(0, 5, "L1").reel(5, 10, "L2").read(4, 4, 1, repeats, at -> 0).read(6, 6, 1, repeats, at -> steps);
    }

    private static Optional<StationPair> pair(Walk walk, double from, double to) {
        return StationPair.of(walk.survey(), at(walk, from), at(walk, to));
    }

    private static List<Reading> at(Walk walk, double positionM) {
        return walk.log().stream().filter(reading -> reading.positionM().value() == positionM).toList();
    }

    /** With one station a side the judge has nothing else to go by. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.7, 1.6, 2.0, 2.6, 4})
    void saysWhatTheJudgeSaysOfAJointWithAStationOnEachSide(double steps) {
        for (int repeats : new int[] {1, 3, 8}) {
            Walk walk = twoStations(steps, repeats);
            JudgedJoint joint = walk.judged().joints().get(0);
            StationPair pair = pair(walk, 4, 6).orElseThrow();
            assertEquals(joint.difference().orElseThrow().steps(), pair.difference().steps(), 1e-12);
            assertEquals(joint.difference().orElseThrow().standardUncertaintySteps(), pair.difference().standardUncertaintySteps(), 1e-12);
            assertEquals(joint.confidence(), pair.confidence());
            assertEquals(joint.verdict(), pair.verdict());
        }
    }

    @Test
    void lookedAtFromTheOtherSideItIsAsFarTheOtherWay() {
        Walk walk = twoStations(3, 2);
        StationPair there = pair(walk, 4, 6).orElseThrow();
        StationPair back = pair(walk, 6, 4).orElseThrow();
        assertEquals(there.difference().steps(), back.difference().steps(), 1e-12);
        assertEquals(there.difference().deltaUPrime(), -back.difference().deltaUPrime(), 1e-15);
        assertEquals(there.verdict(), back.verdict());
    }

    @Test
    void stationsOfOneReelNeedNoAllowanceForUnlikeSpectra() {
        Walk walk = new Walk(7, QUIET).reel(0, 5, "").read(1, 1, 1, 1, at -> 0).read(2, 2, 1, 1, at -> 4);
        assertEquals(Verdict.BEYOND, pair(walk, 1, 2).orElseThrow().verdict());
        assertEquals(Math.sqrt(2) * QUIET / 0.0011, pair(walk, 1, 2).orElseThrow().difference().standardUncertaintySteps(), 0.01);
    }

    @Test
    void theErrorRateIsThatOfOneJointWhateverTheSurveyAsks() {
        Walk walk = twoStations(3.2, 2);
        walk.errorPer = Limits.ErrorPer.SURVEY;
        Walk alone = twoStations(3.2, 2);
        assertEquals(pair(alone, 4, 6).orElseThrow().verdict(), pair(walk, 4, 6).orElseThrow().verdict());
    }

    @Test
    void stationsNearAJointAreComparedAsTheyAre() {
        Walk walk = new Walk(7, QUIET).reel(0, 5, "L1").reel(5, 10, "L2").read(4.9, 4.9, 1, 1, at -> 0).read(5.1, 5.1, 1, 1, at -> 4);
        walk.smearM = 0.5;
        assertEquals(Verdict.NOT_READ, walk.judged().joints().get(0).verdict());
        assertEquals(Verdict.BEYOND, pair(walk, 4.9, 5.1).orElseThrow().verdict());
    }

    @Test
    void aSideWithoutReadingsIsNotCompared() {
        assertTrue(pair(twoStations(3, 1), 4, 7).isEmpty());
    }

    @Test
    void theDistanceAloneIsCountedByTheSurveysRule() {
        Walk walk = twoStations(3, 1);
        assertEquals(3, StationPair.steps(walk.survey(), walk.survey().coves().get(0), Walk.WHITE, Walk.WHITE.plus(3 * 0.0011, 0)), 1e-9);
    }
}
