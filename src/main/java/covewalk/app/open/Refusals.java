package covewalk.app.open;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Soundness;
import covewalk.survey.Survey;
import java.util.List;
import java.util.stream.Stream;

/** Why a description cannot be, or cannot hold the readings that were taken. */
final class Refusals {

    private Refusals() {
    }

    static List<Problem> of(Survey survey, List<Reading> readings) {
        return Stream.concat(Soundness.of(survey).stream(), Soundness.ofReadings(survey, readings).stream())
                .filter(Problem::refused).toList();
    }
}
