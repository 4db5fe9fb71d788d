package covewalk.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What makes a survey sound: everything that is wrong or looks wrong in its description and its readings. Refused is
 * only what cannot be. Files and lines of the description are for the caller to fill in, who knows the file.
 */
public final class Soundness {

    private Soundness() {
    }

    /** Problems of the description; the column is the place, such as {@code coves[1].placements[0].toM}. */
    public static List<Problem> of(Survey survey) {
        List<Problem> problems = new ArrayList<>();
        problems.addAll(VisitCheck.problems(survey));
        problems.addAll(LimitsCheck.problems(survey.limits()));
        problems.addAll(SetUpCheck.problems(survey));
        problems.addAll(ReelCheck.problems(survey));
        problems.addAll(CoveCheck.problems(survey));
        return problems;
    }

    /**
     * Problems of the readings, in the order of the log, each with its line there and the log's column. What a reading
     * says is checked only while it stands: a wrong one is cured by a later row that replaces it.
     */
    public static List<Problem> ofReadings(Survey survey, List<Reading> log) {
        List<Reading> standing = StandingReadings.of(log);
        List<Problem> problems = new ArrayList<>(ReplacementCheck.problems(log, standing));
        ReadingCheck check = new ReadingCheck(survey);
        standing.forEach(check::take);
        problems.addAll(check.problems());
        problems.sort(Comparator.comparingInt(Problem::line));
        return problems;
    }
}
