package covewalk.verdict.trial;

import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Note;
import java.util.List;

/** Walks along a reel whose colour changes between its last two stations before a joint, or does not. */
final class LastStationTrials {

    private static final double LAST_BUT_ONE_M = 4.5;

    /**
     * What became of so many walks.
     *
     * @param found share of those in which the change, or another, was found as one
     * @param told share of those in which it was not, but the note beside the joint says that the last station lies off
     */
    record Outcome(double found, double told) {
    }

    private LastStationTrials() {
    }

    static Outcome of(double steps, int walks) {
        int found = 0;
        int told = 0;
        for (int seed = 0; seed < walks; seed++) {
            boolean here = isFound(steps, seed);
            found += here ? 1 : 0;
            told += !here && !notes(steps, seed).isEmpty() ? 1 : 0;
        }
        return new Outcome((double) found / walks, (double) told / walks);
    }

    private static boolean isFound(double steps, int seed) {
        return cove(steps, seed).judged().faults().stream().anyMatch(fault -> fault.fromM() < LAST_BUT_ONE_M + 0.4);
    }

    static List<Note> notes(double steps, int seed) {
        JudgedJoint joint = cove(steps, seed).judged().joints().get(0);
        return joint.notes().stream().filter(note -> note.kind() == Note.Kind.LAST_STATION_OFF).toList();
    }

    /** Ten stations a side, scatter 0.3 step; a joint of 2 steps. */
    private static TrueCove cove(double steps, int seed) {
        TrueCove cove = new TrueCove(seed);
        cove.scatterSteps = 0.3;
        return cove.begin().reel(0, 5).reel(5, 10).walk(0, 5, 10, atM -> atM < LAST_BUT_ONE_M ? -steps : 0, 0)
                .walk(5, 10, 10, atM -> 2, 0);
    }
}
