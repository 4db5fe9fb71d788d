package covewalk.verdict;

import covewalk.survey.Joint;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * A joint with its verdict.
 *
 * @param setUp id of the set-up whose readings were compared; empty where none were
 * @param difference from the datum's side to the far side; empty where a side was not read
 * @param settle how many more readings would settle it; 0 where it is settled
 * @param rounds the highest round among the readings used, from 1; 0 where none were
 * @param budget of the uncertainty; empty where a side was not read
 * @param notes what bears on this verdict
 */
public record JudgedJoint(Joint joint, String setUp, Optional<Difference> difference, Confidence confidence,
                          Verdict verdict, Settle settle, int rounds, Budget budget, List<Note> notes) {

    public JudgedJoint {
        notes = List.copyOf(notes);
    }

    public double positionM() {
        return joint.positionM();
    }

    /** The two reels' ids, datum's side first. */
    public List<String> reels() {
        return List.of(joint.before().reel(), joint.after().reel());
    }

    JudgedJoint as(Verdict other) {
        return new JudgedJoint(joint, setUp, difference, confidence, other,
                other == Verdict.UNSETTLED ? settle : Settle.SETTLED, rounds, budget, notes);
    }
}
