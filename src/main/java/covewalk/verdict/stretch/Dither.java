package covewalk.verdict.stretch;

/**
 * How much of the rounding of a digit stays in the mean of many readings, because other noise moves them across its
 * edges. The mean of rounded normal numbers is off by a periodic function of the true value; its Fourier series has
 * the amplitudes below (B. Widrow and I. Kollar, Quantization Noise, 2008; from memory, checked by simulation).
 */
final class Dither {

    /** A uniform digit has this standard deviation, as a share of itself. */
    private static final double UNIFORM = 1 / Math.sqrt(12);

    /** Less than this share of half a digit is nothing that could be seen. */
    private static final double NOTHING = 0.01;

    private static final int TERMS = 8;

    private Dither() {
    }

    /**
     * The farthest that the mean may be off, as a share of half a digit: 1 without noise, 0 with much.
     *
     * @param noise standard deviation of what moves the readings
     * @param rounding standard deviation that the digit by itself would have
     */
    static double left(double noise, double rounding) {
        double sds = noise / (rounding / UNIFORM);
        if (TERMS * term(1, sds) < NOTHING) { // the first is the largest
            return 0;
        }
        double sum = 0;
        for (int k = 1; k <= TERMS; k++) {
            sum += term(k, sds);
        }
        double left = Math.min(1, 2 / Math.PI * sum);
        return left < NOTHING ? 0 : left;
    }

    private static double term(int k, double sds) {
        return Math.exp(-2 * Math.PI * Math.PI * k * k * sds * sds) / k;
    }
}
