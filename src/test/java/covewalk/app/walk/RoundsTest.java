package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.app.desk.Place;
import covewalk.survey.Reading;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reels R1 to 5 m and R2 from there; their joint has a verdict once both were read. */
class RoundsTest {

    @TempDir
    Path folder;
    private TestWalk walk;

    @BeforeEach
    void open() {
        walk = TestWalk.in(NewSurvey.in(folder));
    }

    private RoundsTest read(double... positions) {
        for (double at : positions) {
            walk.at(at).readings(1);
        }
        return this;
    }

    private List<Integer> rounds() {
        return walk.onDisk().stream().map(Reading::round).toList();
    }

    @Test
    void aFirstWalkIsOneRoundAlthoughItsJointsHaveVerdictsOnTheWay() {
        read(1, 2, 4, 6, 7, 7, 9);
        assertEquals(List.of(1, 1, 1, 1, 1, 1, 1), rounds());
    }

    @Test
    void goingBackToAReelBeforeItsJointHasAVerdictIsNoNewRound() {
        read(1, 2, 1);
        assertEquals(List.of(1, 1, 1), rounds());
    }

    @Test
    void comingBackToAReelAfterAnotherOneIsANewRound() {
        read(1, 2, 6, 7, 1, 2, 3);
        assertEquals(List.of(1, 1, 1, 1, 2, 2, 2), rounds());
    }

    @Test
    void eachReelCountsItsOwn() {
        read(1, 6, 1, 6, 1);
        assertEquals(List.of(1, 1, 2, 2, 3), rounds());
    }

    @Test
    void goingBackToAStationThatWasLeftIsANewRound() {
        read(1, 6, 7, 6);
        assertEquals(List.of(1, 1, 1, 2), rounds());
    }

    @Test
    void whoHasLookedAtTheVerdictsIsInANewRound() {
        read(1, 6);
        walk.desk().go(Place.FAULTS);
        walk.desk().go(Place.WALK);
        read(7, 8);
        assertEquals(List.of(1, 1, 2, 2), rounds());
    }

    @Test
    void lookingAtTheVerdictsBeforeThereIsOneCountsNothing() {
        read(1);
        walk.desk().go(Place.FAULTS);
        walk.desk().go(Place.WALK);
        read(2);
        assertEquals(List.of(1, 1), rounds());
    }

    @Test
    void aCorrectionKeepsTheRoundOfWhatItCorrects() {
        read(1, 6, 1);
        walk.model().correct(walk.model().correctable().get(0));
        walk.read("0.4581", "0.4103");
        assertEquals(List.of(1, 1, 2, 1), rounds());
    }
}
