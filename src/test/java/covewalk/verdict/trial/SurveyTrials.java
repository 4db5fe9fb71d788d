package covewalk.verdict.trial;

import covewalk.survey.Limits;
import covewalk.verdict.limit.Verdict;
import java.util.List;

/** Surveys of 40 joints at the limit, with the error rate held for all of them together. */
final class SurveyTrials {

    private static final JointCase FORTY = new JointCase("forty joints", cove -> {
        cove.errorPer = Limits.ErrorPer.SURVEY;
        cove.scatterSteps = 0.3;
    }, cove -> {
        for (int i = 0; i < 41; i++) {
            double steps = 2 * (i % 2);
            cove.reel(2 * i, 2 * i + 2).walk(2 * i, 2 * i + 2, 4, atM -> steps, 0);
        }
    });

    private SurveyTrials() {
    }

    /** The share of surveys in which even one joint is called something. */
    static double anyWrong(int trials) {
        int wrong = 0;
        for (int seed = 0; seed < trials; seed++) {
            List<Verdict> verdicts = FORTY.trial(seed);
            wrong += verdicts.contains(Verdict.BEYOND) || verdicts.contains(Verdict.WITHIN) ? 1 : 0;
        }
        return (double) wrong / trials;
    }
}
