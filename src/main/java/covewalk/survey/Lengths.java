package covewalk.survey;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads lengths as people on sites write them: {@code 3.2 m}, {@code 3,2}, {@code 3200 mm}, {@code 12 ft},
 * {@code 12' 6 1/2"}. A number without a unit is metres. A foot is 0.3048 m and an inch 0.0254 m exactly (international
 * yard and pound agreement of 1959).
 */
public final class Lengths {

    private static final String NUMBER = "(\\d+(?:[.,]\\d+)?|[.,]\\d+)";
    private static final String INCHES = "(?:" + NUMBER + "(?:[ -](\\d+)/(\\d+))?|(\\d+)/(\\d+))";
    private static final Pattern SINGLE = Pattern.compile(NUMBER + " ?(m|mm|cm|metres?|meters?)?");
    private static final Pattern FEET = Pattern.compile(
            NUMBER + " ?(?:'|ft\\.?|feet|foot)(?: ?-? ?" + INCHES + " ?(?:\"|in\\.?|inch|inches)?)?");
    private static final Pattern ONLY_INCHES = Pattern.compile(INCHES + " ?(?:\"|in\\.?|inch|inches)");
    private static final BigDecimal INCH = new BigDecimal("0.0254");
    private static final BigDecimal TWELVE = BigDecimal.valueOf(12);
    private static final int MICROMETRES = 6;
    private static final int LONGEST = 40;

    private Lengths() {
    }

    /**
     * The length in metres, with the digits as typed where it was typed in metric units, and exact (to a micrometre
     * where thirds of an inch are involved) where it was in feet and inches.
     *
     * @return the length, 0 or more; empty where the text is none
     */
    public static Optional<Typed> metres(String text) {
        String plain = plain(text);
        if (plain.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher single = SINGLE.matcher(plain);
        if (single.matches()) {
            return metric(single.group(1), single.group(2));
        }
        Matcher feet = FEET.matcher(plain);
        if (feet.matches()) {
            return feetAndInches(feet);
        }
        Matcher inches = ONLY_INCHES.matcher(plain);
        return inches.matches() ? inches(inches, 1).map(found -> typed(found.multiply(INCH))) : Optional.empty();
    }

    /** One kind of space, and straight marks for feet and inches. */
    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00a0\\u2009\\u202f]+", " ")
                .replaceAll("[\\u2032\\u2019]", "'").replaceAll("[\\u2033\\u201d]", "\"").replace("''", "\"");
    }

    private static Optional<Typed> metric(String digits, String unit) {
        BigDecimal number = number(digits);
        if (unit == null || unit.equals("m") || unit.startsWith("met")) {
            return Optional.of(typed(number));
        }
        return Optional.of(typed(number.movePointLeft(unit.equals("mm") ? 3 : 2)));
    }

    /** Twelve inches and more behind feet are a slip of the pen, and not read. */
    private static Optional<Typed> feetAndInches(Matcher written) {
        boolean feetOnly = written.group(2) == null && written.group(5) == null;
        Optional<BigDecimal> inches = feetOnly ? Optional.of(BigDecimal.ZERO) : inches(written, 2);
        return inches.filter(found -> found.compareTo(TWELVE) < 0)
                .map(found -> number(written.group(1)).multiply(TWELVE).add(found))
                .map(all -> typed(all.multiply(INCH).stripTrailingZeros()));
    }

    /** The groups from {@code first}: a number with a fraction behind it, or a fraction alone; not with a 0 below. */
    private static Optional<BigDecimal> inches(Matcher matcher, int first) {
        String whole = matcher.group(first);
        String over = whole == null ? matcher.group(first + 3) : matcher.group(first + 1);
        String under = whole == null ? matcher.group(first + 4) : matcher.group(first + 2);
        if (under != null && number(under).signum() == 0) {
            return Optional.empty();
        }
        BigDecimal inches = whole == null ? BigDecimal.ZERO : number(whole);
        return Optional.of(over == null ? inches
                : inches.add(number(over).divide(number(under), 2 * MICROMETRES, RoundingMode.HALF_EVEN)));
    }

    private static BigDecimal number(String digits) {
        return new BigDecimal(digits.replace(',', '.'));
    }

    private static Typed typed(BigDecimal metres) {
        BigDecimal shown = metres.scale() > MICROMETRES
                ? metres.setScale(MICROMETRES, RoundingMode.HALF_EVEN).stripTrailingZeros() : metres;
        BigDecimal plain = shown.scale() < 0 ? shown.setScale(0) : shown;
        return new Typed(plain.toPlainString(), plain.doubleValue());
    }
}
