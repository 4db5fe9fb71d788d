package covewalk.survey;

import java.util.List;
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
        return fill(pattern, problem.details());
    }

    /** Puts details in for {0}, {1} and so on; what they say is never read as a pattern itself. */
    private static String fill(String pattern, List<String> details) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < pattern.length(); i++) {
            boolean slot = pattern.charAt(i) == '{' && i + 2 < pattern.length() && pattern.charAt(i + 2) == '}';
            if (slot) {
                text.append(details.get(pattern.charAt(i + 1) - '0'));
                i += 2;
            } else {
                text.append(pattern.charAt(i));
            }
        }
        return text.toString();
    }
}
