package covewalk.app.surveys;

import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All that is wrong with a folder or file, one line each, with file and line; of very many the first, and how many more. */
final class ProblemLines {

    private static final int MOST = 12;

    private ProblemLines() {
    }

    static String of(List<Problem> problems, Texts texts) {
        return of(problems, problem -> problem.inFull(texts.locale()), texts);
    }

    static String of(List<Problem> problems, Function<Problem, String> inFull, Texts texts) {
        Stream<String> lines = problems.stream().limit(MOST).map(inFull);
        Stream<String> more = problems.size() > MOST ? Stream.of(texts.count("problems", problems.size() - MOST)) : Stream.empty();
        return Stream.concat(lines, more).collect(Collectors.joining("\n"));
    }
}
