package covewalk.verdict;

import covewalk.colour.StepPlane;
import covewalk.survey.Survey;
import covewalk.verdict.claim.ReelClaim;
import covewalk.verdict.limit.Verdict;
import java.util.List;

/**
 * All verdicts of a survey.
 *
 * @param survey with the limits it was judged against
 * @param coves in the survey's order
 * @param notes what bears on the evidence as a whole
 * @param claims for each reel whose label claims steps, what the readings say of it
 */
public record Judgement(Survey survey, List<CoveJudgement> coves, List<Note> notes, List<ReelClaim> claims) {

    public Judgement {
        coves = List.copyOf(coves);
        notes = List.copyOf(notes);
        claims = List.copyOf(claims);
    }

    /** How many joints have this verdict, and other faults with it: every place is counted once. */
    public long count(Verdict verdict) {
        return coves.stream().mapToLong(cove -> cove.count(verdict)).sum();
    }

    /** All faults in walking order: cove by cove, from the datum on. */
    public List<Fault> faults() {
        return coves.stream().flatMap(cove -> cove.faults().stream()).toList();
    }

    /** The plane in which a cove's differences were counted in steps. */
    public StepPlane planeOf(CoveJudgement cove) {
        return Planes.of(survey, cove.cove());
    }
}
