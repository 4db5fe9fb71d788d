package covewalk.survey.file;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a survey's folder holds, and everything that is wrong with it.
 *
 * @param survey the description; empty where it could not be taken
 * @param log the readings in the order of the log, also those that later ones replace
 * @param problems of both files, each with its file, line and place
 */
public record ReadSurvey(Optional<Survey> survey, List<Reading> log, List<Problem> problems) {

    public ReadSurvey {
        Objects.requireNonNull(survey, "survey");
        log = List.copyOf(log);
        problems = List.copyOf(problems);
    }

    /** Whether something in it cannot be: then nothing is to be judged by it. */
    public boolean refused() {
        return survey.isEmpty() || problems.stream().anyMatch(Problem::refused);
    }

    /** What was taken and looks wrong. */
    public List<Problem> warnings() {
        return problems.stream().filter(problem -> !problem.refused()).toList();
    }
}
