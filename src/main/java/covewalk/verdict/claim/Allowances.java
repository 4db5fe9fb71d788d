package covewalk.verdict.claim;

import covewalk.colour.StepRule;
import covewalk.survey.Reel;
import covewalk.survey.ReelsById;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Optional;

/** What the claims of a survey's labels allow at its joints. */
public final class Allowances {

    private final ReelsById reels;
    private final StepRule rule;

    public Allowances(Survey survey) {
        this.reels = new ReelsById(survey);
        this.rule = survey.limits().stepRule();
    }

    /** Between two reels by their ids, the datum's side first; empty where one of them claims nothing. */
    public Optional<ClaimAllowance> between(List<String> ids) {
        return between(ids.stream().flatMap(id -> reels.find(id).stream()).toList(), rule);
    }

    /** Between two reels; empty where there are not two, or one of them claims nothing. */
    public static Optional<ClaimAllowance> between(List<Reel> reels, StepRule rule) {
        return reels.size() == 2 ? ClaimAllowance.between(reels.get(0), reels.get(1), rule) : Optional.empty();
    }
}
