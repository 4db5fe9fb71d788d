package covewalk.survey;

import covewalk.colour.ColourTemperature;
import java.util.ArrayList;
import java.util.List;

/** x and y as typed. */
final class XyCheck {

    private XyCheck() {
    }

    static List<Problem> problems(TypedPair pair) {
        double x = pair.first().value();
        double y = pair.second().value();
        List<Problem> problems = new ArrayList<>();
        UnitRange.check(pair.first(), "x", problems);
        UnitRange.check(pair.second(), "y", problems);
        if (problems.isEmpty() && x + y > 1) {
            problems.add(Problem.refusal("colour.xy.sum", pair.first().text(), pair.second().text()).inColumn("y"));
        } else if (problems.isEmpty()) {
            PlaceOfColour.problems(ColourTemperature.of(TypedColour.xyOf(pair)))
                    .forEach(problem -> problems.add(problem.inColumn("x")));
        }
        if (!problems.isEmpty()) {
            suspect(x, y, problems);
        }
        return problems;
    }

    private static void suspect(double x, double y, List<Problem> problems) {
        if (UsualWhite.asXy(y, x)) {
            problems.add(Problem.warning("colour.xy.swapped").inColumn("x"));
        } else if (UsualWhite.asUvPrime(x, y)) {
            problems.add(Problem.warning("colour.xy.is-uv").inColumn("x"));
        }
    }
}
