package covewalk.verdict;

import covewalk.survey.Placement;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.Objects;

/**
 * Something to act on.
 *
 * @param positionM the place to go to, m from the datum
 * @param fromM where it may begin, m
 * @param toM where it may end, m
 * @param placements what lies on both sides (a joint: two; else the one it is in), datum's side first
 * @param difference what was measured: across the joint or change, over the whole drift, off the neighbours, or
 *     from the target to the placement
 * @param limitSteps the limit it was judged against
 * @param hint what the pattern suggests; a suspicion, never a finding
 * @param settle how many more readings would settle it
 * @param budget of the uncertainty
 * @param notes what bears on this verdict
 */
public record Fault(FaultKind kind, double positionM, double fromM, double toM, List<Placement> placements,
                    Difference difference, double limitSteps, Confidence confidence, Verdict verdict, Hint hint,
                    Settle settle, Budget budget, List<Note> notes) {

    public Fault {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(hint, "hint");
        placements = List.copyOf(placements);
        notes = List.copyOf(notes);
    }

    /** The reels' ids, datum's side first. */
    public List<String> reels() {
        return placements.stream().map(Placement::reel).toList();
    }
}
