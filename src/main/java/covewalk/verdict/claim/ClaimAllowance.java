package covewalk.verdict.claim;

import covewalk.colour.StepRule;
import covewalk.survey.Reel;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far apart two neighbours may lie with both of their claims true: the sum of the claims about one centre, and the
 * distance of the centres on top where they differ.
 *
 * @param firstSteps what the reel on the datum's side claims, steps
 * @param secondSteps what the other claims, steps
 * @param centresApartSteps how far apart the centres are, steps; empty where a label names none
 */
public record ClaimAllowance(double firstSteps, double secondSteps, OptionalDouble centresApartSteps) {

    /** Between two labels; empty where one of them claims nothing. */
    public static Optional<ClaimAllowance> between(Reel first, Reel second, StepRule rule) {
        if (first.claimedSteps().isEmpty() || second.claimedSteps().isEmpty()) {
            return Optional.empty();
        }
        Optional<ClaimCentre> from = ClaimCentre.of(first);
        Optional<ClaimCentre> to = ClaimCentre.of(second);
        OptionalDouble apart = from.isPresent() && to.isPresent() ? OptionalDouble.of(apart(from.get(), to.get(), rule))
                : OptionalDouble.empty();
        return Optional.of(new ClaimAllowance(first.claimedSteps().getAsDouble(), second.claimedSteps().getAsDouble(), apart));
    }

    private static double apart(ClaimCentre from, ClaimCentre to, StepRule rule) {
        return from.plane(rule).steps(to.colour().u() - from.colour().u(), to.colour().v() - from.colour().v());
    }

    /** Whether both are known to be about one centre. */
    public boolean oneCentre() {
        return centresApartSteps.isPresent() && centresApartSteps.getAsDouble() == 0;
    }

    /** The largest difference with both claims true, steps; where a centre is not named, at least this. */
    public double steps() {
        return firstSteps + secondSteps + centresApartSteps.orElse(0);
    }
}
