package covewalk.survey;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A number with the digits as somebody typed them: {@code 0.4580} is not {@code 0.458}.
 *
 * @param text the digits, with a point as decimal mark
 * @param value the same as a number, always finite
 */
public record Typed(String text, double value) {

    private static final int LONGEST = 40;

    /** One unit of the last decimal, by how many there are. A log asks for two powers of ten a reading, several times. */
    private static final double[] UNIT = {1, 1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8};

    public Typed {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(text + " is no finite number");
        }
    }

    /**
     * Reads a number as people and meters write it: with a decimal point or comma, perhaps spaces around it, perhaps
     * an exponent. A number with both marks, or with two of one, is read by nobody the same way and is not read here.
     *
     * @return the number, or empty where the text is none
     */
    public static Optional<Typed> of(String text) {
        String digits = text.strip().replace('\u2212', '-');
        if (digits.indexOf(',') >= 0 && digits.indexOf('.') >= 0) {
            return Optional.empty();
        }
        digits = digits.replace(',', '.');
        if (digits.isEmpty() || digits.length() > LONGEST || !looksLikeANumber(digits)) {
            return Optional.empty();
        }
        try {
            double value = Double.parseDouble(digits);
            return Double.isFinite(value) ? Optional.of(new Typed(digits, value)) : Optional.empty();
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    /** {@code Double.parseDouble} also takes "NaN", "0x1p3" and "1d"; a meter's digits hold none of these. */
    private static boolean looksLikeANumber(String digits) {
        return digits.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.' || c == '-' || c == '+' || c == 'e' || c == 'E');
    }

    /** One unit of the last digit typed: 0.0001 for 0.4580, 1 for 2700. */
    public double resolution() {
        if (text.indexOf('e') >= 0 || text.indexOf('E') >= 0) {
            return new BigDecimal(text).ulp().doubleValue();
        }
        int point = text.indexOf('.');
        int decimals = point < 0 ? 0 : text.length() - point - 1;
        return decimals < UNIT.length ? UNIT[decimals] : Math.pow(10, -decimals);
    }
}
