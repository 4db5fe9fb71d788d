package covewalk.cli;

import covewalk.survey.Problem;
import java.util.List;
import java.util.Locale;

/** A command stops here: the lines say why, and what to do. */
final class CannotBeDone extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient List<String> lines;

    private CannotBeDone(List<String> lines) {
        super(String.join("\n", lines));
        this.lines = List.copyOf(lines);
    }

    static CannotBeDone because(String sentence) {
        return new CannotBeDone(List.of(sentence));
    }

    static CannotBeDone because(List<Problem> problems) {
        return because(problems, Locale.ROOT);
    }

    static CannotBeDone because(List<Problem> problems, Locale language) {
        return new CannotBeDone(problems.stream().map(problem -> problem.inFull(language)).toList());
    }

    List<String> lines() {
        return lines;
    }
}
