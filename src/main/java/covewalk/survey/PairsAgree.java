package covewalk.survey;

import covewalk.colour.Jacobian;
import covewalk.colour.UvPrime;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the pairs a meter gave are one colour. Each pair's digits leave a box open, half a unit either way; carried
 * into u', v' the boxes of two pairs must touch.
 */
final class PairsAgree {

    /** A tenth of a step for the meter's own arithmetic, on top of the digits (common practice, no source). */
    private static final double ARITHMETIC = UvPrime.STEP / 10;

    private record Box(String name, String column, UvPrime centre, double halfU, double halfV) {

        static Box of(String name, String column, TypedPair pair, UvPrime centre, Jacobian jacobian) {
            double first = pair.first().resolution() / 2;
            double second = pair.second().resolution() / 2;
            return new Box(name, column, centre, Math.abs(jacobian.a()) * first + Math.abs(jacobian.b()) * second,
                    Math.abs(jacobian.c()) * first + Math.abs(jacobian.d()) * second);
        }

        boolean touches(Box other) {
            return Math.abs(centre.u() - other.centre.u()) <= halfU + other.halfU + ARITHMETIC
                    && Math.abs(centre.v() - other.centre.v()) <= halfV + other.halfV + ARITHMETIC;
        }
    }

    private PairsAgree() {
    }

    /** A warning for each pair that disagrees with the one that counts; none of the pairs may be refused. */
    static List<Problem> problems(TypedColour colour) {
        List<Box> boxes = new ArrayList<>();
        colour.xy().ifPresent(pair -> boxes.add(Box.of("x, y", "x", pair, TypedColour.xyOf(pair).toUvPrime(),
                TypedColour.xyOf(pair).jacobianToUvPrime())));
        colour.uvPrime().ifPresent(pair -> boxes.add(Box.of("u', v'", "u_prime", pair, TypedColour.uvPrimeOf(pair),
                new Jacobian(1, 0, 0, 1))));
        colour.cctDuv().ifPresent(pair -> boxes.add(Box.of("CCT, Duv", "cct_k", pair,
                TypedColour.cctDuvOf(pair).toUvPrime(), TypedColour.cctDuvOf(pair).jacobianToUvPrime())));
        List<Problem> problems = new ArrayList<>();
        for (Box other : boxes.subList(1, boxes.size())) {
            if (!other.touches(boxes.get(0))) {
                problems.add(disagree(boxes.get(0), other));
            }
        }
        return problems;
    }

    private static Problem disagree(Box counts, Box other) {
        return Problem.warning("colour.disagree", other.name, ColourDigits.steps(counts.centre.stepsTo(other.centre)),
                counts.name).inColumn(other.column);
    }
}
