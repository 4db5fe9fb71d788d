package covewalk.verdict.stretch;

import covewalk.colour.Covariance;

/**
 * The parts of an uncertainty that more readings make smaller, in u', v', each counted once.
 *
 * @param repeatability what reading again at one place varies by
 * @param scatter what places on one stretch vary by, in excess of that
 * @param digits what the digits typed leave open, where it averages out and the repeatability does not hold it already
 * @param found all of them together as the readings themselves show them, with nothing declared: told beside the
 *     others and not added to them; zero where the readings show nothing
 */
public record Parts(Covariance repeatability, Covariance scatter, Covariance digits, Covariance found) {

    public static final Parts NONE = new Parts(Covariance.ZERO, Covariance.ZERO, Covariance.ZERO, Covariance.ZERO);

    public Parts plus(Parts other) {
        return new Parts(repeatability.plus(other.repeatability), scatter.plus(other.scatter),
                digits.plus(other.digits), found.plus(other.found));
    }

    public Parts times(double factor) {
        return new Parts(repeatability.times(factor), scatter.times(factor), digits.times(factor),
                found.times(factor));
    }

    public Covariance sum() {
        return stated().plus(scatter);
    }

    /** The mean variance of {@link #sum()} over both directions. */
    double meanVariance() {
        double uu = repeatability.uu() + digits.uu() + scatter.uu();
        double vv = repeatability.vv() + digits.vv() + scatter.vv();
        return (uu + vv) / 2;
    }

    /** What reading at one place leaves open: all of it, were the strip of one colour. */
    public Covariance stated() {
        return repeatability.plus(digits);
    }
}
