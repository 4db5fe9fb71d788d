package covewalk.verdict.stretch;

import covewalk.colour.Covariance;

/**
 * The parts of an uncertainty that more readings make smaller, in u', v', each counted once.
 *
 * @param repeatability what reading again at one place varies by
 * @param scatter what places on one stretch vary by, in excess of that
 * @param digits what the digits typed leave open, where it averages out and the repeatability does not hold it already
 */
public record Parts(Covariance repeatability, Covariance scatter, Covariance digits) {

    public static final Parts NONE = new Parts(Covariance.ZERO, Covariance.ZERO, Covariance.ZERO);

    public Parts plus(Parts other) {
        return new Parts(repeatability.plus(other.repeatability), scatter.plus(other.scatter),
                digits.plus(other.digits));
    }

    public Parts times(double factor) {
        return new Parts(repeatability.times(factor), scatter.times(factor), digits.times(factor));
    }

    public Covariance sum() {
        return repeatability.plus(scatter).plus(digits);
    }
}
