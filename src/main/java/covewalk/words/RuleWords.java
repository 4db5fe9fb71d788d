package covewalk.words;

import covewalk.colour.StepPlane;
import covewalk.colour.StepRule;
import covewalk.survey.Limits;
import covewalk.verdict.Judgement;
import java.util.stream.Collectors;

/** The limit and the decision rule in words: a verdict is worth no more than the rule printed beside it. */
public final class RuleWords {

    private static final int LONGEST = 200;

    private final Words words;

    public RuleWords(Words words) {
        this.words = words;
    }

    /** The limits between neighbours and, where there is one, against the target, and who set them. */
    public String limits(Limits limits) {
        String neighbours = words.text("limit.neighbours", words.numbers().plain(limits.neighbourSteps(), 2));
        String target = limits.targetSteps().isEmpty() ? ""
                : words.text("limit.target", words.numbers().plain(limits.targetSteps().getAsDouble(), 2));
        return words.text("limit.both", neighbours + target, setBy(limits));
    }

    /** Who set the limit; nobody but the inspector where no clause is named. */
    public String setBy(Limits limits) {
        return limits.setBy().isBlank() ? words.text("limit.by-inspector") : words.text("limit.by", Shortened.of(limits.setBy(), LONGEST));
    }

    /** Who set a limit between neighbours that is only tried: not whoever set the survey's own. */
    public String setByTrial(Limits own) {
        String ours = words.numbers().plain(own.neighbourSteps(), 2);
        return own.setBy().isBlank() ? words.text("limit.tried.by-inspector", ours) : words.text("limit.tried", ours, own.setBy());
    }

    /** The decision rule in one sentence: the steps, the error rate and what it is kept for, and the method. */
    public String decision(Judgement judgement) {
        Limits limits = judgement.survey().limits();
        String rate = words.numbers().percent(limits.errorRate());
        String sure = words.numbers().percent(1 - limits.errorRate());
        return words.text("rule.decision", sure, words.text("rule.per." + limits.errorPer().code(), rate), steps(judgement));
    }

    /** Which steps were counted, naming every circle or ellipse that was used. */
    public String steps(Judgement judgement) {
        StepRule rule = judgement.survey().limits().stepRule();
        String planes = judgement.coves().stream().map(judgement::planeOf).map(this::plane).distinct()
                .collect(Collectors.joining("; "));
        return planes.isEmpty() ? words.text("rule.steps." + rule.code(), words.text("rule.no-ellipse")) : planes;
    }

    private String plane(StepPlane plane) {
        return words.text("rule.steps." + plane.rule().code(), plane.name());
    }
}
