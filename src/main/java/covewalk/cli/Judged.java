package covewalk.cli;

import covewalk.survey.Survey;
import covewalk.survey.file.ReadSurvey;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
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
        Survey survey = limit.map(steps -> own.with(own.limits().withNeighbourSteps(steps))).orElse(own);
        Judgement judgement = Progress.during(Sentences.of("judging"), terminal,
                () -> new Judge().judge(survey, read.log(), correctDrift));
        return new Judged(judgement, new Warnings(read.warnings(), words));
    }
}
