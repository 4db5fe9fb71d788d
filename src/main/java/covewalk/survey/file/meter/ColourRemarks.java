package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.TypedColourCheck;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What looks wrong with the colours of a file: pairs of one row that disagree, colours unusual for a white, coarse
 * digits. Of each kind the first row is told, and in how many rows it is so.
 */
final class ColourRemarks {

    private final Map<String, Problem> first = new LinkedHashMap<>();
    private final Map<String, Integer> many = new LinkedHashMap<>();
    private final int rows;

    ColourRemarks(List<RowOutcome> outcomes, Columns columns) {
        rows = outcomes.size();
        for (RowOutcome outcome : outcomes) {
            outcome.reading().flatMap(reading -> reading.colour())
                    .ifPresent(colour -> TypedColourCheck.problems(colour).forEach(problem -> take(problem, outcome.row(), columns)));
        }
    }

    private void take(Problem problem, MeterRow row, Columns columns) {
        first.putIfAbsent(problem.key(), problem.at("", row.line(), columns.titleOf(problem.column())));
        many.merge(problem.key(), 1, Integer::sum);
    }

    List<Problem> warnings() {
        List<Problem> warnings = new ArrayList<>();
        first.forEach((key, problem) -> {
            warnings.add(problem);
            if (many.get(key) > 1) {
                warnings.add(Problem.warning("import.more-rows", many.get(key), rows).at("", problem.line(), problem.column()));
            }
        });
        return warnings;
    }
}
