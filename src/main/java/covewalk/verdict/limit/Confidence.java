package covewalk.verdict.limit;

/**
 * How surely a difference lies on one side of a limit: one less the largest chance of so extreme a measurement were
 * the true difference just at the limit. It is not the chance that the difference lies there.
 *
 * @param beyond for "beyond", 0 to 1
 * @param within for "within", 0 to 1; the two add to at most 1
 */
public record Confidence(double beyond, double within) {

    /** Nothing was measured. */
    public static final Confidence NONE = new Confidence(0, 0);

    /** The less sure of two, each way. */
    public Confidence and(Confidence other) {
        return new Confidence(Math.min(beyond, other.beyond), Math.min(within, other.within));
    }

    /** The verdict at {@code errorRate}, the share of wrong ones allowed in each direction. */
    public Verdict at(double errorRate) {
        if (beyond >= 1 - errorRate) {
            return Verdict.BEYOND;
        }
        return within >= 1 - errorRate ? Verdict.WITHIN : Verdict.UNSETTLED;
    }
}
