package covewalk.app.parts;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How a number of known size is typed by its digits alone: what stands before them is there already.
 *
 * @param before what need not be typed: "0.", "0.0" or nothing
 * @param digits how many are typed then
 * @param signed whether the number has a sign, which is typed
 */
public record DigitPattern(String before, int digits, boolean signed) {

    /** Some more than there should be may be typed: a slip is asked about and not swallowed. */
    private static final int SPARE = 4;

    private static final Pattern FREE = Pattern.compile("\\d*\\.?\\d*");

    public DigitPattern {
        if (!before.isEmpty() && !before.matches("0\\.0*")) {
            throw new IllegalArgumentException(before + " before the digits: it is nothing, or 0 and a point with zeros");
        }
    }

    /** Whole numbers such as a CCT of so many digits; 0 for any number of them. */
    public static DigitPattern whole(int digits) {
        return new DigitPattern("", digits, false);
    }

    /** A fraction below 1 with so many decimals. */
    public static DigitPattern fraction(int decimals) {
        return new DigitPattern("0.", decimals, false);
    }

    /** A small fraction below 0.1 with so many decimals and a sign. */
    public static DigitPattern smallSigned(int decimals) {
        return new DigitPattern("0.0", decimals - 1, true);
    }

    /**
     * What a field holds once somebody has typed or pasted: with a point whichever mark was typed, with what stands
     * before the digits put back where it was deleted or typed once more.
     *
     * @param was what it held
     * @param proposed what it would hold as typed
     * @return empty where that can be no such number
     */
    public Optional<String> accept(String was, String proposed) {
        String plain = proposed.replaceAll("[\\s\\u00a0\\u202f]", "").replace(',', '.').replace('\u2212', '-');
        String unsigned = plain.replaceAll("[+-]", "");
        String sign = sign(was, plain);
        if (!signed && unsigned.length() != plain.length() || !unsigned.matches("[\\d.]*")) {
            return Optional.empty();
        }
        Optional<String> number = before.isEmpty() ? free(unsigned) : behind(unsigned);
        return number.filter(text -> typed(text).length() <= (digits == 0 ? 7 : digits + SPARE)).map(text -> sign + text);
    }

    /** The sign typed last: the one that was not there before. */
    private static String sign(String was, String now) {
        boolean plus = now.indexOf('+') >= 0;
        boolean minus = now.indexOf('-') >= 0;
        if (plus && minus) {
            return was.startsWith("-") ? "+" : "-";
        }
        return minus ? "-" : plus ? "+" : "";
    }

    private static Optional<String> free(String text) {
        return FREE.matcher(text).matches() ? Optional.of(text) : Optional.empty();
    }

    private Optional<String> behind(String text) {
        int mark = text.lastIndexOf('.');
        if (mark < 0) { // the mark was deleted, or digits were typed over all of it
            boolean onlyBefore = before.replace(".", "").startsWith(text);
            return Optional.of(onlyBefore ? before : before + text);
        }
        String ahead = text.substring(0, mark).replace(".", "");
        if (!ahead.chars().allMatch(c -> c == '0')) {
            return Optional.empty();
        }
        String whole = "0." + text.substring(mark + 1);
        return Optional.of(before.startsWith(whole) ? before : whole);
    }

    /** The digits somebody typed, without what was there already. */
    public String typed(String text) {
        String number = text.replaceAll("[+-]", "");
        return number.startsWith(before) ? number.substring(before.length()) : number.replace("0.", "");
    }

    /** Whether all digits are there. */
    public boolean isFull(String text) {
        return digits > 0 && typed(text).length() == digits;
    }

    /** Whether nothing was typed yet. */
    public boolean isBlank(String text) {
        return typed(text).isEmpty() && sign("", text).isEmpty();
    }

    /** With the other sign; the first asked for is minus. */
    public String turned(String text) {
        String number = text.replaceAll("[+-]", "");
        return !signed ? text : text.startsWith("-") ? "+" + number : "-" + number;
    }
}
