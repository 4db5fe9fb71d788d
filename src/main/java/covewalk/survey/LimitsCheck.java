package covewalk.survey;

import java.util.List;

/** Who set the limit: without a clause it is the inspector's own, and reports say so. */
final class LimitsCheck {

    private LimitsCheck() {
    }

    static List<Problem> problems(Limits limits) {
        return limits.setBy().isBlank() ? List.of(Problem.warning("survey.limit-unset").inColumn("limits.setBy")) : List.of();
    }
}
