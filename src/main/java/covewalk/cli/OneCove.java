package covewalk.cli;

import covewalk.survey.Placement;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Judgement;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The verdicts of one cove alone, with what the labels of its reels claim; they are those of the whole survey's judgement. */
final class OneCove {

    private OneCove() {
    }

    static Judgement of(Judgement judgement, String id) throws CannotBeDone {
        Optional<CoveJudgement> cove = judgement.coves().stream().filter(each -> each.cove().id().equals(id)).findFirst();
        if (cove.isEmpty()) {
            throw CannotBeDone.because(Sentences.of("explain.no-such-cove", id,
                    judgement.coves().stream().map(each -> each.cove().id()).collect(Collectors.joining(", "))));
        }
        Set<String> reels = cove.get().cove().placements().stream().map(Placement::reel).collect(Collectors.toSet());
        return new Judgement(judgement.survey(), List.of(cove.get()), judgement.notes(),
                judgement.claims().stream().filter(claim -> reels.contains(claim.reel().id())).toList());
    }
}
