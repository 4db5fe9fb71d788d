package covewalk.app.reels;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.Survey;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.Judgement;
import covewalk.verdict.claim.ReelClaim;
import covewalk.verdict.stretch.Stretch;
import java.util.List;
import java.util.Optional;

/**
 * What is known of one reel.
 *
 * @param lies where it lies, cove by cove
 * @param stretches what was measured of it
 * @param claim what its label claims, beside what was measured; empty where it claims nothing or nothing was judged yet
 * @param faults it takes part in
 */
record ReelFacts(List<Lies> lies, List<Measured> stretches, Optional<ReelClaim> claim, List<Part> faults) {

    /** A stretch of a cove that the reel lights. */
    record Lies(Cove cove, Placement placement) {
    }

    /** A stretch of one colour found in the reel. */
    record Measured(Cove cove, Stretch stretch) {
    }

    /** A fault, and the cove it is in. */
    record Part(CoveJudgement cove, Fault fault) {
    }

    ReelFacts {
        lies = List.copyOf(lies);
        stretches = List.copyOf(stretches);
        faults = List.copyOf(faults);
    }

    /** @param judgement empty before the first */
    static ReelFacts of(String reel, Survey survey, Optional<Judgement> judgement) {
        List<Lies> lies = survey.coves().stream().flatMap(cove -> cove.placements().stream()
                .filter(placement -> placement.reel().equals(reel)).map(placement -> new Lies(cove, placement))).toList();
        List<CoveJudgement> coves = judgement.map(Judgement::coves).orElse(List.of());
        List<Measured> stretches = coves.stream().flatMap(cove -> cove.stretches().stream()
                .filter(stretch -> stretch.placement().reel().equals(reel)).map(stretch -> new Measured(cove.cove(), stretch))).toList();
        List<Part> faults = coves.stream().flatMap(cove -> cove.faults().stream()
                .filter(fault -> fault.reels().contains(reel)).map(fault -> new Part(cove, fault))).toList();
        return new ReelFacts(lies, stretches, judgement.flatMap(all -> all.claims().stream()
                .filter(claim -> claim.reel().id().equals(reel)).findFirst()), faults);
    }
}
