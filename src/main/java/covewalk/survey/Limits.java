package covewalk.survey;

import covewalk.colour.StepRule;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the site allows, and how sure a verdict has to be.
 *
 * @param neighbourSteps steps that neighbours may differ by
 * @param targetSteps steps that a placement may lie from the cove's target, where somebody set it
 * @param setBy the clause that sets the limit; empty where the inspector chose it
 * @param errorRate largest share of wrong verdicts, 0 to 0.5 (both open)
 */
public record Limits(double neighbourSteps, OptionalDouble targetSteps, String setBy, StepRule stepRule,
                     double errorRate, ErrorPer errorPer) {

    /** The share of wrong verdicts allowed where a survey names none (common practice, no source). */
    public static final double USUAL_ERROR_RATE = 0.05;

    public Limits {
        if (!(neighbourSteps > 0 && neighbourSteps <= 100)) { // written so that NaN is refused too
            throw new IllegalArgumentException("a limit of " + neighbourSteps + " steps: it lies above 0, up to 100");
        }
        if (!(errorRate > 0 && errorRate < 0.5)) {
            throw new IllegalArgumentException("an error rate of " + errorRate + ": it lies between 0 and 0.5");
        }
    }

    /** The same limits with another number of steps between neighbours, which no clause then sets. */
    public Limits withNeighbourSteps(double steps) {
        return new Limits(steps, targetSteps, "", stepRule, errorRate, errorPer);
    }

    /** What the error rate is kept for. */
    public enum ErrorPer {
        /** Each joint by itself. */
        JOINT,
        /** All joints of the survey together (Holm's method). */
        SURVEY;

        /** The word in a survey file. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<ErrorPer> of(String code) {
            return Arrays.stream(values()).filter(per -> per.code().equals(code)).findFirst();
        }
    }
}
