package covewalk.survey.file.convert;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes numbers with so many significant digits, in plain notation with a point, correctly rounded from the exact
 * value of the double (half to even), and never beyond the {@value #MOST}th decimal: the sums are exact to that.
 * {@code String.format} does the same and takes forty times as long.
 */
final class SignificantDigits {

    /** The most digits and the most decimals there are. */
    static final int MOST = 12;

    private static final double[] TENS = tens();
    /** Relative error of one multiplication by an exact power of ten, doubled. */
    private static final double PRODUCT_ERROR = 0x1p-52;
    private static final double LARGEST = 1e12;

    private final int digits;

    /** @param digits 1 to {@value #MOST} */
    SignificantDigits(int digits) {
        if (digits < 1 || digits > MOST) {
            throw new IllegalArgumentException(digits + " significant digits: from 1 to " + MOST + " can be written");
        }
        this.digits = digits;
    }

    private static double[] tens() {
        double[] tens = new double[MOST + 2];
        tens[0] = 1;
        for (int i = 1; i < tens.length; i++) {
            tens[i] = tens[i - 1] * 10; // exact up to 1e22
        }
        return tens;
    }

    /** Writes a finite number below 1e12 in size. */
    void write(double value, RowBuffer out) {
        double size = Math.abs(value);
        if (!(size < LARGEST)) {
            throw new IllegalArgumentException(value + " is too large to be written here");
        }
        int decimals = Math.min(MOST, digits - 1 - exponent(size));
        long units = rounded(size, decimals);
        if (units >= (long) TENS[digits] && decimals > 0) { // 0.9999999 became 1.000000, which has a digit too many
            units /= 10;
            decimals--;
        }
        if (units == 0) {
            out.add('0');
            return;
        }
        if (value < 0) {
            out.add('-');
        }
        out.addDecimal(decimals < 0 ? units * (long) TENS[-decimals] : units, Math.max(decimals, 0));
    }

    /** The power of ten of the first digit; at least that of the last decimal there is. */
    private static int exponent(double size) {
        int exponent = size < 1 ? -1 : 0;
        while (exponent < 0 && exponent > -MOST && size * TENS[-exponent] < 1) {
            exponent--;
        }
        while (exponent >= 0 && exponent < MOST && size >= TENS[exponent + 1]) {
            exponent++;
        }
        return exponent;
    }

    /** How many units of the last decimal the number is nearest to. */
    private static long rounded(double size, int decimals) {
        double scaled = decimals >= 0 ? size * TENS[decimals] : size / TENS[-decimals];
        long whole = (long) scaled;
        double rest = scaled - whole;
        if (Math.abs(rest - 0.5) <= scaled * PRODUCT_ERROR) { // too near to a tie to tell after one rounding
            return new BigDecimal(size).setScale(decimals, RoundingMode.HALF_EVEN).movePointRight(decimals).longValueExact();
        }
        return rest > 0.5 ? whole + 1 : whole;
    }
}
