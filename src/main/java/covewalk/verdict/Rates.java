package covewalk.verdict;

import covewalk.survey.Limits;
import covewalk.survey.Limits.ErrorPer;
import covewalk.survey.Survey;
import covewalk.verdict.limit.RoundShares;

/** Which share of wrong verdicts a single place may have. */
final class Rates {

    private Rates() {
    }

    static double forRound(Limits limits, int round) {
        return limits.errorRate() * RoundShares.of(round);
    }

    /**
     * What one joint may have each way, whatever becomes of the others. Where all joints share one rate, that is reckoned
     * as if none of the others settled. Goes through all coves: asked once for a survey.
     */
    static double ofOneJoint(Survey survey) {
        Limits limits = survey.limits();
        return limits.errorPer() == ErrorPer.SURVEY
                ? limits.errorRate() / 2 / survey.coves().stream().mapToInt(cove -> cove.joints().size()).sum()
                : limits.errorRate();
    }
}
