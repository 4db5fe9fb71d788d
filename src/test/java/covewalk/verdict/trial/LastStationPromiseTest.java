package covewalk.verdict.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Note;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The station next to a joint, where it lies off the rest of its reel: told in one flat end of a hundred, no more. */
class LastStationPromiseTest {

    private static final int TRIALS = 500;

    @Test
    void flatReelsSeldomShowOne() {
        long told = IntStream.range(0, TRIALS).filter(seed -> tells(0, seed)).count();
        assertTrue(told <= TRIALS * Shares.allowed(0.02, TRIALS), told + " of " + TRIALS + ", two ends each");
    }

    @Test
    void aChangeBeforeTheLastStationThatIsNotFoundOtherwiseIsToldMostly() {
        int told = 0;
        int hidden = 0;
        for (int seed = 0; seed < TRIALS; seed++) {
            boolean found = cove(1.5, seed).judged().faults().stream().anyMatch(fault -> fault.fromM() < 4.9);
            hidden += found ? 0 : 1;
            told += !found && tells(1.5, seed) ? 1 : 0;
        }
        assertTrue(hidden > TRIALS / 3, "hidden " + hidden);
        assertTrue(told > hidden / 2, told + " of " + hidden);
    }

    @Test
    void itNamesReelPositionAndSteps() {
        Note note = IntStream.range(0, TRIALS).mapToObj(seed -> told(1.5, seed)).flatMap(List::stream).findFirst().orElseThrow();
        assertEquals("R1", note.details().get(0));
        assertEquals("4.75", note.details().get(1));
        assertEquals(1.5, Double.parseDouble(note.details().get(2)), 1.3, "noise of 0.42 step, three times");
    }

    private static boolean tells(double steps, int seed) {
        return !told(steps, seed).isEmpty();
    }

    private static List<Note> told(double steps, int seed) {
        JudgedJoint joint = cove(steps, seed).judged().joints().get(0);
        return joint.notes().stream().filter(note -> note.kind() == Note.Kind.LAST_STATION_OFF).toList();
    }

    private static TrueCove cove(double steps, int seed) {
        TrueCove cove = new TrueCove(seed);
        cove.scatterSteps = 0.3;
        return cove.begin().reel(0, 5).reel(5, 10).walk(0, 5, 10, atM -> atM < 4.5 ? -steps : 0, 0).walk(5, 10, 10, atM -> 2, 0);
    }
}
