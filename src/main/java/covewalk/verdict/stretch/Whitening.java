package covewalk.verdict.stretch;

import covewalk.colour.Covariance;

/** The linear map after which noise of a given covariance is the same in every direction, with variance 1. */
record Whitening(double first, double second1, double second2) {

    /** Keeps sums finite where neither meter nor digits show any noise: a millionth of a step. */
    static final Covariance LEAST = Covariance.isotropic(1e-9);

    /** The inverse of the Cholesky factor. */
    static Whitening of(Covariance c) {
        double l11 = Math.sqrt(c.uu());
        double l21 = c.uv() / l11;
        double l22 = Math.sqrt(Math.max(c.vv() - l21 * l21, 1e-6 * c.vv()));
        return new Whitening(1 / l11, -l21 / (l11 * l22), 1 / l22);
    }

    double first(double du, double dv) {
        return first * du;
    }

    double second(double du, double dv) {
        return second1 * du + second2 * dv;
    }

    /** The mean variance, over both directions, of noise of another covariance. */
    double meanVariance(Covariance c) {
        double a = first * first * c.uu();
        double b = second1 * second1 * c.uu() + 2 * second1 * second2 * c.uv() + second2 * second2 * c.vv();
        return (a + b) / 2;
    }
}
