package covewalk.survey;

import java.util.List;

/** The coordinates of every colour lie between 0 and 1; y and v' are above 0. */
final class UnitRange {

    private UnitRange() {
    }

    static void check(Typed number, String column, List<Problem> problems) {
        boolean height = column.equals("y") || column.equals("v_prime");
        boolean within = number.value() >= 0 && number.value() <= 1 && !(height && number.value() == 0);
        if (!within) {
            problems.add(Problem.refusal("colour.range", number.text()).inColumn(column));
        }
    }
}
