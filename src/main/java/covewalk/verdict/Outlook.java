package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.verdict.limit.Quantiles;
import covewalk.verdict.limit.RoundShares;
import covewalk.verdict.stretch.Ending;

/**
 * What so many further readings a side will make of a verdict, if the difference is as it seems. What was read already
 * then lies just where the truth is, so only what is new errs; and the noise will be estimated from all of them, by
 * Student's t, which itself errs. Beyond the limit that is counted along the line of the difference; within it the direction
 * in which the noise is largest counts as well, since there it has to be within in every direction.
 */
final class Outlook {

    /** Nine normal numbers of ten lie lower than this many standard deviations above their mean. */
    private static final double LUCK = 1.2816;

    /** How far an end lies off the middle of evenly read stations, squared, in variances of their positions: of very many. */
    private static final double END = 3;

    /** How much of the doubt whether there is a slope further readings leave (by simulation). */
    private static final double DOUBT_LEFT = 0.5;

    /** How many standard deviations of noise across a short difference count for the length it adds (by simulation). */
    private static final double ACROSS = 1;

    /** However few readings the noise was estimated from, its error is never reckoned to be as large as itself. */
    private static final double MOST_SPREAD = 0.9;

    private final Comparison comparison;
    private final double limit;
    private final double steps;
    private final double degrees;
    private final double variance;
    private final double newVariance;

    private Outlook(Comparison comparison, double limit, double degrees, Ahead from, Ahead to) {
        this.comparison = comparison;
        this.limit = limit;
        this.steps = comparison.steps();
        this.degrees = degrees;
        this.variance = from.variance() + to.variance();
        this.newVariance = from.newVariance() + to.newVariance();
    }

    /** The variance of a side, and what of it is owed to new readings. */
    private record Ahead(double variance, double newVariance) {
        static final Ahead NOTHING_LEFT = new Ahead(0, 0);
    }

    /** @param more stations of one reading on each side */
    static Outlook after(int more, Comparison comparison, double limitSteps) {
        return new Outlook(comparison, limitSteps, degrees(comparison, more), ahead(comparison, comparison.from(), more, limitSteps),
                ahead(comparison, comparison.to(), more, limitSteps));
    }

    /** After more readings than anybody takes. */
    static Outlook whereOnlyWhatStaysIsLeft(Comparison comparison, double limitSteps) {
        return new Outlook(comparison, limitSteps, Double.POSITIVE_INFINITY, Ahead.NOTHING_LEFT, Ahead.NOTHING_LEFT);
    }

    /** Readings carry information as the inverse of their variance. */
    private static Ahead ahead(Comparison comparison, Side side, int more, double limit) {
        double level = variance(comparison, side.parts().sum(), limit);
        double one = variance(comparison, side.oneMore(), limit);
        if (!(level > 0 && one > 0)) {
            double whole = variance(comparison, side.shrinking(), limit);
            return new Ahead(whole, 0);
        }
        double before = 1 / level;
        double then = before + more / one;
        double whole = (1 + slope(comparison, side, limit) / level) / then;
        return new Ahead(whole + DOUBT_LEFT * variance(comparison, side.doubt(), limit), whole * (1 - before / then));
    }

    /** What the slope adds at an end: as much as now, and no less than usual. */
    private static double slope(Comparison comparison, Side side, double limit) {
        double usual = END * Ending.USUAL_SHARE * variance(comparison, side.parts().sum(), limit);
        return side.atEnd() ? Math.max(usual, variance(comparison, side.slope().sum(), limit)) : 0;
    }

    private static double variance(Comparison comparison, Covariance uvPrime, double limit) {
        return comparison.steps() > limit ? comparison.along(uvPrime)
                : (comparison.along(uvPrime) + comparison.largest(uvPrime)) / 2;
    }

    /** Where a single station a side showed no scatter, further ones will. */
    private static double degrees(Comparison comparison, int more) {
        int sides = (comparison.from().readings() > 0 ? 1 : 0) + (comparison.to().readings() > 0 ? 1 : 0);
        return scatterShown(comparison) + (double) sides * more;
    }

    private static double scatterShown(Comparison comparison) {
        boolean shown = comparison.from().stations() > 1 || comparison.to().stations() > 1;
        return shown && Double.isFinite(comparison.degreesFound()) ? comparison.degreesFound() : 0;
    }

    /** @param errorRate that this place may have by itself, each way */
    boolean settles(double errorRate) {
        double all = variance + variance(comparison, comparison.unlike(), limit);
        double whole = variance > 0 ? degrees * Math.pow(all / variance, 2) : Double.POSITIVE_INFINITY;
        double away = away(all);
        double mayErr = LUCK * LUCK * newVariance;
        if (!(away > 0 && away * away > mayErr)) {
            return false;
        }
        // some sds, and luck times the error of the colour and of these sds, make up the way to the limit: solved for them
        double spread = Math.min(MOST_SPREAD, LUCK * LUCK / 2 * (1 / whole + doubtOfNoise()));
        double sds = (away - Math.sqrt(mayErr + spread * (away * away - mayErr))) / (Math.sqrt(all) * (1 - spread));
        return Quantiles.upTo(sds, whole) >= 1 - errorRate * RoundShares.of(comparison.rounds() + 1);
    }

    /** Whether the difference would still not be known to half the limit, with two standard uncertainties. */
    boolean scatters() {
        return 2 * Math.sqrt(variance) > limit;
    }

    /** How badly the noise is known now, as far as further readings may show another. */
    private double doubtOfNoise() {
        double now = scatterShown(comparison);
        double fresh = 1 - now / degrees;
        return now > 0 && Double.isFinite(degrees) ? fresh * fresh / now : 0;
    }

    /** How far off the limit it lies, what noise adds to its length and coarse digits may hide taken off. */
    private double away(double all) {
        double sd = Math.sqrt(all);
        double off = steps > limit ? steps - Math.hypot(limit, sd) : limit - Math.hypot(steps, ACROSS * sd);
        return off - comparison.roundingReach();
    }
}
