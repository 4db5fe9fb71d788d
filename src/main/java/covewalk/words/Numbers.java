package covewalk.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Numbers and lengths as people read them, with the decimal mark of a language. */
public final class Numbers {

    private static final double INCHES_PER_M = 1 / 0.0254; // exact, by the international yard of 1959
    /** What is less is the rounding of a sum, and 0. */
    private static final double LEAST = 1e-9;
    private static final int LEAST_DECIMALS = 10;
    private static final MathContext TWO_DIGITS = new MathContext(2);
    private static final int QUARTERS_PER_FOOT = 48;
    private static final String[] QUARTERS = {"", " 1/4", " 1/2", " 3/4"};

    private final DecimalFormatSymbols symbols;
    private final Map<String, DecimalFormat> prepared = new ConcurrentHashMap<>();

    Numbers(Locale locale) {
        symbols = DecimalFormatSymbols.getInstance(locale);
        symbols.setMinusSign('\u2212');
    }

    /** With exactly this many decimals; zero never has a sign. */
    public String fixed(double value, int decimals) {
        String digits = format("0" + (decimals == 0 ? "" : "." + "0".repeat(decimals)), RoundingMode.HALF_EVEN).format(value);
        boolean zero = digits.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero && digits.startsWith("\u2212") ? digits.substring(1) : digits;
    }

    /** With at most this many decimals, none of them an idle zero; with two digits where so few would show 0 for what is none. */
    public String plain(double value, int mostDecimals) {
        boolean wouldVanish = Math.abs(value) > LEAST && Math.abs(value) <= Math.pow(10, -mostDecimals) / 2;
        return wouldVanish ? format(optional(LEAST_DECIMALS), RoundingMode.HALF_EVEN).format(new BigDecimal(value).round(TWO_DIGITS))
                : format(optional(mostDecimals), RoundingMode.HALF_EVEN).format(value);
    }

    private static String optional(int decimals) {
        return "0" + (decimals == 0 ? "" : "." + "#".repeat(decimals));
    }

    /** Steps, to two decimals. */
    public String steps(double steps) {
        return fixed(steps, 2);
    }

    /** A position or length, as in "5.00 m". */
    public String metres(double m) {
        return fixed(m, 2) + " m";
    }

    /** The same to the nearest quarter inch, as on a tape measure: "16 ft 4 3/4 in". Of positions from 0 up. */
    public String feetInches(double m) {
        long quarters = Math.round(m * INCHES_PER_M * 4);
        long inches = quarters % QUARTERS_PER_FOOT / 4;
        String fraction = QUARTERS[(int) (quarters % 4)];
        return quarters / QUARTERS_PER_FOOT + " ft " + inches + fraction + " in";
    }

    /** A share as percent, as in "5 %". */
    public String percent(double share) {
        return plain(share * 100, 2) + " %";
    }

    /** A confidence to three decimals, cut and not rounded: it is never overstated, and 1 is never reached. */
    public String confidence(double value) {
        return format("0.000", RoundingMode.DOWN).format(Math.min(value, 0.999));
    }

    /** A prepared format, copied since it is no good for two threads: a large table asks for a million numbers. */
    private DecimalFormat format(String pattern, RoundingMode rounding) {
        DecimalFormat format = (DecimalFormat) prepared.computeIfAbsent(pattern, text -> new DecimalFormat(text, symbols)).clone();
        format.setRoundingMode(rounding);
        return format;
    }
}
