package covewalk.survey;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Problems as a user sees them, one a line: R for refused, W for taken with a warning. */
public final class Seen {

    private Seen() {
    }

    public static String all(List<Problem> problems) {
        return problems.stream().map(problem -> (problem.refused() ? "R " : "W ") + problem.inFull(Locale.ROOT))
                .collect(Collectors.joining("\n"));
    }
}
