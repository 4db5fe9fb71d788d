package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.verdict.limit.Verdict;
import java.util.function.IntPredicate;

/** How many more readings a side, each at a place of its own, would settle a verdict in nine cases of ten. */
final class Settling {

    private Settling() {
    }

    /** @param errorRate that this place may have by itself, each way */
    static Settle of(Comparison comparison, Verdict verdict, double limitSteps, double errorRate,
                     Settle.WhyNot staying) {
        if (verdict != Verdict.UNSETTLED) {
            return Settle.SETTLED;
        }
        int more = fewest(readings -> Outlook.after(readings, comparison, limitSteps).settles(errorRate));
        if (more <= Settle.MOST) {
            return Settle.after(more);
        }
        boolean hopeless = !Outlook.whereOnlyWhatStaysIsLeft(comparison, limitSteps).settles(errorRate);
        if (hopeless) {
            return Settle.never(reason(comparison, staying));
        }
        boolean scatters = Outlook.after(Settle.MOST, comparison, limitSteps).scatters();
        return Settle.never(scatters ? Settle.WhyNot.SCATTER : Settle.WhyNot.NEAR_THE_LIMIT);
    }

    /** From 1 up; one too many where no number does. What settles it settles it with more readings too. */
    private static int fewest(IntPredicate settles) {
        int tooFew = 0;
        int enough = Settle.MOST + 1;
        while (enough - tooFew > 1) {
            int middle = (tooFew + enough) / 2;
            if (settles.test(middle)) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return enough;
    }

    private static Settle.WhyNot reason(Comparison comparison, Settle.WhyNot staying) {
        Covariance digits = comparison.from().common().plus(comparison.to().common());
        return comparison.along(digits) > comparison.along(comparison.unlike()) ? Settle.WhyNot.COARSE_DIGITS : staying;
    }
}
