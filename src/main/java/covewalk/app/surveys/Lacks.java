package covewalk.app.surveys;

import covewalk.survey.Cove;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.StandingReadings;
import covewalk.survey.Survey;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a survey still lacks.
 *
 * @param coves how many it has
 * @param notWalked how many of them have no reading
 * @param unsettled places that the readings do not settle; empty where they were not judged, since there are many
 * @param beyond places beyond the limit; empty where they were not judged
 */
record Lacks(int coves, long notWalked, OptionalLong unsettled, OptionalLong beyond) {

    /** A log longer than this is judged when it is opened: a list of surveys must not keep the one that is open waiting. */
    private static final int MOST_READINGS = 3000;

    /** By reading and judging; not for the screen's thread. */
    static Lacks of(Survey survey, List<Reading> log) {
        return log.size() > MOST_READINGS ? of(survey, log, OptionalLong.empty(), OptionalLong.empty())
                : of(survey, log, new Judge().judge(survey, log, false));
    }

    static Lacks of(Survey survey, List<Reading> log, Judgement judgement) {
        return of(survey, log, OptionalLong.of(judgement.count(Verdict.UNSETTLED)), OptionalLong.of(judgement.count(Verdict.BEYOND)));
    }

    private static Lacks of(Survey survey, List<Reading> log, OptionalLong unsettled, OptionalLong beyond) {
        Set<String> walked = StandingReadings.of(log).stream().filter(reading -> reading.role() == Role.WALK)
                .map(Reading::cove).collect(Collectors.toSet());
        long notWalked = survey.coves().stream().map(Cove::id).filter(cove -> !walked.contains(cove)).count();
        return new Lacks(survey.coves().size(), notWalked, unsettled, beyond);
    }
}
