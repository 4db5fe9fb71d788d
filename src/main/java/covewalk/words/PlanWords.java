package covewalk.words;

import covewalk.colour.UvPrime;
import covewalk.survey.Limits;
import covewalk.verdict.plan.CovePlan;
import covewalk.verdict.plan.WalkPlan;
import java.util.Optional;

/** What a plan is for, what it rests on and what it asks for, in words. */
public final class PlanWords {

    private final Words words;
    private final Numbers numbers;

    public PlanWords(Words words) {
        this.words = words;
        this.numbers = words.numbers();
    }

    /** Which differences it is made to settle. */
    public String goal(WalkPlan plan) {
        double limit = plan.survey().limits().neighbourSteps();
        String within = limit > WalkPlan.OFF_THE_LIMIT_STEPS
                ? words.text("plan.goal.within", numbers.plain(limit - WalkPlan.OFF_THE_LIMIT_STEPS, 2)) : "";
        return words.text("plan.goal", numbers.plain(limit + WalkPlan.OFF_THE_LIMIT_STEPS, 2), numbers.plain(limit, 2), within);
    }

    /** With which set-up it is to be read, where there are several. */
    public Optional<String> setUp(WalkPlan plan) {
        return plan.survey().setUps().size() < 2 ? Optional.empty()
                : Optional.of(words.text("plan.setup", plan.setUp().id(), plan.setUp().meter()));
    }

    /** What noise it reckons with. */
    public String noise(WalkPlan plan) {
        Limits limits = plan.survey().limits();
        String from = words.text(plan.noise().scatterMeasured() ? "plan.noise.measured" : "plan.noise.usual");
        return words.text("plan.noise", numbers.steps(plan.noise().readingUv() / UvPrime.STEP),
                numbers.steps(plan.noise().scatterUv() / UvPrime.STEP), from,
                numbers.percent(limits.errorRate()) + " " + words.text("plan.per." + limits.errorPer().code()));
    }

    /** How one gets there. */
    public String access(CovePlan plan) {
        return words.text("plan.access." + plan.access().code(), numbers.metres(plan.cove().heightM().orElse(0)));
    }

    /** How long it takes, as far as anybody can say. */
    public String minutes(CovePlan plan) {
        int least = plan.access().leastMinutes(plan.readings());
        int most = plan.access().mostMinutes(plan.readings());
        return least == most ? words.text("plan.minutes", numbers.fixed(least, 0))
                : words.text("plan.minutes.range", numbers.fixed(least, 0), numbers.fixed(most, 0));
    }
}
