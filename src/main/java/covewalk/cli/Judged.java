package covewalk.cli;

import covewalk.survey.Limits;
import covewalk.survey.Survey;
import covewalk.survey.file.ReadSurvey;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import covewalk.words.RuleWords;
import covewalk.words.Words;
import java.util.Optional;

/** A survey judged, and what looks wrong in what it was judged by. */
record Judged(Judgement judgement, Warnings warnings) {

    /**
     * @param limit steps between neighbours that go before the survey's own
     * @param correctDrift whether a drift of meter or light is taken off the readings
     * @param words of the language that the warnings are told in
     */
    static Judged of(ReadSurvey read, Optional<Double> limit, boolean correctDrift, Words words, Terminal terminal)
            throws Exception {
        Survey own = read.survey().orElseThrow();
        Survey survey = limit.map(steps -> own.with(tried(steps, own.limits(), words))).orElse(own);
        Judgement judgement = Progress.during(Sentences.of("judging"), terminal,
                () -> new Judge().judge(survey, read.log(), correctDrift));
        return new Judged(judgement, new Warnings(read.warnings(), words));
    }

    /** Whoever set the survey's limits did not set this one. */
    private static Limits tried(double steps, Limits own, Words words) {
        return new Limits(steps, own.targetSteps(), new RuleWords(words).setByTrial(own), own.stepRule(), own.errorRate(), own.errorPer());
    }
}
