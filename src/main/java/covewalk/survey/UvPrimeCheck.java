package covewalk.survey;

import covewalk.colour.ColourTemperature;
import java.util.ArrayList;
import java.util.List;

/** u' and v' as typed. */
final class UvPrimeCheck {

    private UvPrimeCheck() {
    }

    static List<Problem> problems(TypedPair pair) {
        List<Problem> problems = new ArrayList<>();
        UnitRange.check(pair.first(), "u_prime", problems);
        UnitRange.check(pair.second(), "v_prime", problems);
        if (problems.isEmpty()) {
            PlaceOfColour.problems(ColourTemperature.of(TypedColour.uvPrimeOf(pair)))
                    .forEach(problem -> problems.add(problem.inColumn("u_prime")));
        }
        if (!problems.isEmpty()) {
            suspect(pair.first().value(), pair.second().value(), problems);
        }
        return problems;
    }

    private static void suspect(double u, double v, List<Problem> problems) {
        if (UsualWhite.asUvPrime(u, 1.5 * v)) {
            problems.add(Problem.warning("colour.uv.is-1960").inColumn("v_prime"));
        } else if (UsualWhite.asUvPrime(v, u)) {
            problems.add(Problem.warning("colour.uv.swapped").inColumn("u_prime"));
        } else if (UsualWhite.asXy(u, v)) {
            problems.add(Problem.warning("colour.uv.is-xy").inColumn("u_prime"));
        }
    }
}
