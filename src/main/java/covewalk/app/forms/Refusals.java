package covewalk.app.forms;

import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Why something cannot be, in one text; readings that stand against it are counted and only the first is told. */
public final class Refusals {

    private final Texts texts;

    public Refusals(Texts texts) {
        this.texts = texts.of(Refusals.class);
    }

    public String sentences(List<Problem> problems) {
        List<Problem> readings = problems.stream().filter(Refusals::isOfReading).toList();
        Stream<String> others = problems.stream().filter(problem -> !isOfReading(problem)).map(this::sentence);
        Stream<String> first = readings.stream().limit(1)
                .map(problem -> texts.count("refused.readings", readings.size()) + " " + sentence(problem));
        return Stream.concat(others, first).distinct().collect(Collectors.joining(" "));
    }

    private String sentence(Problem problem) {
        return problem.sentence(texts.locale());
    }

    private static boolean isOfReading(Problem problem) {
        return problem.key().startsWith("log.");
    }
}
