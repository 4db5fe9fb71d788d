package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;

/**
 * Sums over stations of what is left between them and the line of their stretch.
 *
 * @param squares sum of squares and products in u', v'
 * @param degrees stations less the numbers fitted to them, for each of u' and v'
 * @param stations how many
 * @param shares sum over stations of one over the number of readings
 * @param digits sum over stations of what the digits leave open of its mean
 */
record Residuals(Covariance squares, double degrees, int stations, double shares, Covariance digits) {

    static final Residuals NONE = new Residuals(Covariance.ZERO, 0, 0, 0, Covariance.ZERO);

    static Residuals of(Stretch stretch) {
        CovarianceSum squares = new CovarianceSum();
        CovarianceSum digits = new CovarianceSum();
        double shares = 0;
        for (Station station : stretch.stations()) {
            UvPrime fitted = stretch.line().at(station.positionM());
            double du = station.mean().u() - fitted.u();
            double dv = station.mean().v() - fitted.v();
            squares.add(du * du, du * dv, dv * dv);
            shares += 1.0 / station.readings().size();
            digits.add(station.digits(), 1.0 / station.readings().size());
        }
        int n = stretch.stations().size();
        return new Residuals(squares.times(1), Math.max(0, n - (stretch.line().drifts() ? 2 : 1)), n, shares, digits.times(1));
    }

    Residuals plus(Residuals other) {
        return new Residuals(squares.plus(other.squares), degrees + other.degrees, stations + other.stations,
                shares + other.shares, digits.plus(other.digits));
    }

    Covariance covariance() {
        return squares.times(1 / degrees);
    }

    /** Squares of u' and of v' together. */
    double sum() {
        return squares.uu() + squares.vv();
    }

    /** What repeatability and digits alone would leave, for a mean station. */
    Covariance expected(Repeatability repeatability) {
        Covariance mean = repeatability.covariance().times(shares / stations);
        return repeatability.measured() ? mean : mean.plus(digits.times(1.0 / stations));
    }
}
