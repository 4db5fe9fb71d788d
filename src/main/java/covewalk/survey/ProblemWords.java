package covewalk.survey;

import java.util.Locale;
import java.util.ResourceBundle;

/** The sentences for problems, from {@code problems.properties} beside this class. */
final class ProblemWords {

    private static final ResourceBundle.Control NO_DETOUR =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private ProblemWords() {
    }

    static String sentence(Problem problem, Locale locale) {
        String pattern = ResourceBundle.getBundle("covewalk.survey.problems", locale, NO_DETOUR).getString(problem.key());
        return Slots.fill(pattern, problem.details());
    }
}
