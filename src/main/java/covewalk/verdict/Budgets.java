package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.survey.SetUp;
import covewalk.verdict.Budget.Entry;
import covewalk.verdict.Budget.Of;
import covewalk.verdict.Budget.Part;
import covewalk.verdict.Budget.Source;
import java.util.ArrayList;
import java.util.List;

/** Draws up the budget of a comparison. */
final class Budgets {

    /** Parts smaller than this add nothing that anybody could print, steps. */
    private static final double NOTHING = 1e-4;

    private final Comparison comparison;
    private final SetUp setUp;
    private final List<Entry> entries = new ArrayList<>();

    private Budgets(Comparison comparison, SetUp setUp) {
        this.comparison = comparison;
        this.setUp = setUp;
    }

    /**
     * @param meter the part that stays because of the meter: {@link Part#UNLIKE_REELS} or {@link Part#METER}
     * @param drift what the correction of a drift leaves open; it is in the comparison already
     */
    static Budget of(Comparison comparison, SetUp setUp, Part meter, Covariance drift) {
        Budgets budget = new Budgets(comparison, setUp);
        budget.add(comparison.from(), Of.DATUM_SIDE);
        budget.add(comparison.to(), Of.FAR_SIDE);
        String uncertainty = meter == Part.METER ? "absoluteUv" : "unlikeUv";
        budget.add(meter, Of.BOTH, budget.stated(uncertainty), less(comparison.unlike(), drift), 0);
        budget.add(Part.DRIFT_CORRECTION, Of.BOTH, Source.MEASURED, drift, 0);
        return new Budget(budget.entries, comparison.degrees());
    }

    private static Covariance less(Covariance whole, Covariance part) {
        return new Covariance(Math.max(0, whole.uu() - part.uu()), 0, Math.max(0, whole.vv() - part.vv()));
    }

    private void add(Side side, Of of) {
        Source repeatability = side.repeatabilityMeasured() ? Source.MEASURED : stated("repeatabilityUv");
        add(Part.REPEATABILITY, of, repeatability, side.parts().repeatability(), side.readings());
        add(Part.SCATTER, of, Source.MEASURED, side.parts().scatter(), side.readings());
        add(Part.SLOPE, of, Source.MEASURED, side.slope().sum().plus(side.doubt()), side.readings());
        add(Part.DIGITS, of, Source.TYPED, side.parts().digits(), side.readings());
        add(Part.COARSE_DIGITS, of, Source.TYPED, side.common(), 0);
    }

    private void add(Part part, Of of, Source source, Covariance covariance, int readings) {
        double steps = Math.sqrt(comparison.along(covariance));
        if (steps > NOTHING) {
            entries.add(new Entry(part, of, source, steps, readings));
        }
    }

    private Source stated(String uncertainty) {
        return setUp.assumed().contains(uncertainty) ? Source.ASSUMED : Source.DECLARED;
    }
}
