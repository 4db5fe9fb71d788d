package covewalk.verdict.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.verdict.Note;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The station next to a joint, where it lies off the rest of its reel: told in one flat end of a hundred, no more. */
class LastStationPromiseTest {

    private static final int TRIALS = 500;

    @Test
    void flatReelsSeldomShowOne() {
        double told = LastStationTrials.of(0, TRIALS).told();
        assertTrue(told <= Shares.allowed(0.02, TRIALS), told + " of flat joints, two ends each");
    }

    @Test
    void aChangeBeforeTheLastStationThatIsNotFoundOtherwiseIsToldMostly() {
        LastStationTrials.Outcome walks = LastStationTrials.of(1.5, TRIALS);
        assertTrue(walks.found() < 2 / 3.0, "else there is little to tell of: " + walks);
        assertTrue(walks.told() > (1 - walks.found()) / 2, walks.toString());
    }

    @Test
    void itNamesReelPositionAndSteps() {
        Note note = IntStream.range(0, TRIALS).mapToObj(seed -> LastStationTrials.notes(1.5, seed)).flatMap(List::stream)
                .findFirst().orElseThrow();
        assertEquals("R1", note.details().get(0));
        assertEquals("4.75", note.details().get(1));
        assertEquals(1.5, Double.parseDouble(note.details().get(2)), 1.3, "noise of 0.42 step, three times");
    }
}
