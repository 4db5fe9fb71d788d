package covewalk.survey;

import java.util.List;

/** Whether the light had come to its colour before it was read. */
final class VisitCheck {

    /** LED light settles within half an hour (common practice, no source). */
    private static final int WARM_MINUTES = 30;

    private VisitCheck() {
    }

    static List<Problem> problems(Survey survey) {
        int minutes = survey.visit().minutesOn().orElse(WARM_MINUTES);
        return minutes >= WARM_MINUTES ? List.of()
                : List.of(Problem.warning("survey.minutes-on", minutes, WARM_MINUTES).inColumn("visit.minutesOn"));
    }
}
