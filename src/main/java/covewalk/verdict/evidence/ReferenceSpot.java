package covewalk.verdict.evidence;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;

/**
 * What a place read again and again shows of drift, of the meter or of the light.
 *
 * @param visits how often somebody came back to it; readings without a walk reading between them are one visit
 * @param readAtEnd whether hardly any walk reading follows the last visit
 * @param timed whether all its readings have a time; else they stand in the order of reading
 * @param from the first reading's time, minutes, or its place in the order
 * @param to the last one's
 * @param zoned whether the times name their zone
 * @param middle mean colour of its readings, as typed
 * @param u the line through u'
 * @param v the line through v'
 * @param digits what the digits typed leave open of one reading, in u', v'
 * @param repeatabilityUv declared or assumed for the set-up
 */
public record ReferenceSpot(Spot spot, int visits, boolean readAtEnd, boolean timed, double from, double to, boolean zoned,
                            UvPrime middle, Slope u, Slope v, Covariance digits, double repeatabilityUv) {

    /** Two visits cannot tell a drift from a jump (common practice, no source). */
    private static final int FEWEST_VISITS = 3;

    /** The share of steady meters that drift is said of: half of it in each of u' and v'. */
    private static final double FALSE_ALARMS = 0.05;

    /** A drift counts from this many repeatabilities over the walk (common practice, no source). */
    private static final double COUNTS = 2;

    /** Whether a drift could be seen at all. */
    public boolean tells() {
        return visits >= FEWEST_VISITS && readAtEnd;
    }

    /** A drift that chance does not explain and that is large enough to matter. */
    public boolean drifts() {
        double repeat = repeatabilityUv * repeatabilityUv;
        boolean slopes = u.exceeds(FALSE_ALARMS / 2, digits.uu(), repeat) || v.exceeds(FALSE_ALARMS / 2, digits.vv(), repeat);
        return visits >= FEWEST_VISITS && slopes && Math.hypot(du(), dv()) > COUNTS * repeatabilityUv;
    }

    /** Change of u' from the first reading to the last, by the line. */
    public double du() {
        return u.perUnit() * lasted();
    }

    /** Change of v' likewise. */
    public double dv() {
        return v.perUnit() * lasted();
    }

    /** Minutes from the first reading to the last, or places in the order. */
    public double lasted() {
        return to - from;
    }

    /** What a reading taken then is off by, from one half way; beyond the visits as at the nearest of them. */
    UvPrime corrected(UvPrime colour, double at) {
        double off = Math.max(from, Math.min(to, at)) - (from + to) / 2;
        return colour.plus(-u.perUnit() * off, -v.perUnit() * off);
    }

    /** Uncertainty of the correction between two readings so far apart in time, in u', v'. */
    public Covariance uncertainty(double minutes) {
        double repeat = repeatabilityUv * repeatabilityUv;
        double apart = Math.min(Math.abs(minutes), lasted());
        return new Covariance(u.variance(digits.uu(), repeat), 0, v.variance(digits.vv(), repeat)).times(apart * apart);
    }
}
