package covewalk.app.open;

import covewalk.survey.Problem;
import java.util.List;

/** Nothing was written, and why. */
final class NotWritten extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    NotWritten(List<Problem> problems) {
        super(problems.toString());
        this.problems = List.copyOf(problems);
    }

    List<Problem> problems() {
        return problems;
    }
}
