package covewalk.verdict.plan;

import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.Judgement;
import java.util.List;

/**
 * Where to read and how often, so that a true difference one step off the limit is settled in nine cases of ten.
 *
 * @param setUp with which it is to be read
 * @param coves in the survey's order
 */
public record WalkPlan(Survey survey, SetUp setUp, ExpectedNoise noise, List<CovePlan> coves) {

    /** How far off the limit a difference is to be settled, steps. */
    public static final double OFF_THE_LIMIT_STEPS = 1;

    public WalkPlan {
        coves = List.copyOf(coves);
    }

    /**
     * For the survey's first set-up.
     *
     * @param judged the survey with the readings it has so far, perhaps none; what they settle is not planned again
     */
    public static WalkPlan of(Judgement judged) {
        return of(judged, judged.survey().firstSetUp());
    }

    /** @param setUp of the survey, with which it is to be read; its meter's noise and smear are planned for */
    public static WalkPlan of(Judgement judged, SetUp setUp) {
        return new Planner(judged, setUp).plan();
    }

    public int readings() {
        return coves.stream().mapToInt(CovePlan::readings).sum();
    }
}
