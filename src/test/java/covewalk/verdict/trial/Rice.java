package covewalk.verdict.trial;

import org.apache.commons.math3.special.Gamma;

/**
 * The length of a two-dimensional normal vector of known mean length, with the same noise in every direction; by the
 * series of central chi-square distributions (NIST/SEMATECH e-Handbook has the central one; the mixture from memory). It
 * shares nothing with the sums that it is held against.
 */
final class Rice {

    private Rice() {
    }

    /** The share of measured lengths up to {@code length} where the true one is {@code truth}. */
    static double upTo(double length, double truth, double sd) {
        double half = truth * truth / (2 * sd * sd);
        double x = length * length / (2 * sd * sd);
        double sum = 0;
        for (int j = 0; j < 2 * half + 60; j++) {
            double weight = Math.exp(-half + j * Math.log(half) - Gamma.logGamma(j + 1));
            sum += weight * Gamma.regularizedGammaP(j + 1, x);
        }
        return sum;
    }

    /** The length that a share of measured ones stays below. */
    static double quantile(double share, double truth, double sd) {
        double low = 0;
        double high = truth + 10 * sd;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean below = upTo(middle, truth, sd) < share;
            low = below ? middle : low;
            high = below ? high : middle;
        }
        return low;
    }
}
