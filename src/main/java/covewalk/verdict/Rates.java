package covewalk.verdict;

import covewalk.survey.Limits;
import covewalk.verdict.limit.RoundShares;

/** Which share of wrong verdicts a single place may have. */
final class Rates {

    private Rates() {
    }

    static double forRound(Limits limits, int round) {
        return limits.errorRate() * RoundShares.of(round);
    }
}
