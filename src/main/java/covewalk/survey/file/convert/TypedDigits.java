package covewalk.survey.file.convert;

import java.nio.charset.StandardCharsets;

/** Reads the digits in a cell: a point or a comma before the decimals, not both, perhaps an exponent. */
final class TypedDigits {

    private static final long LARGEST_EXACT = 1L << 53;
    private static final int LONGEST = 40;
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};

    private TypedDigits() {
    }

    /** The number, rounded to the nearest double; NaN where the cell holds none. */
    static double read(byte[] bytes, int start, int end) {
        int at = start;
        boolean negative = at < end && bytes[at] == '-';
        if (negative || at < end && bytes[at] == '+') {
            at++;
        }
        long units = 0;
        int decimals = -1;
        int digits = 0;
        for (; at < end; at++) {
            int c = bytes[at];
            if (c >= '0' && c <= '9') {
                units = units * 10 + c - '0';
                digits++;
                decimals += decimals >= 0 ? 1 : 0;
            } else if ((c == '.' || c == ',') && decimals < 0) {
                decimals = 0;
            } else {
                return slowly(bytes, start, end);
            }
            if (units >= LARGEST_EXACT / 10 || decimals >= TENS.length) {
                return slowly(bytes, start, end);
            }
        }
        double value = decimals > 0 ? units / TENS[decimals] : units; // both exact: one rounding, the right one
        return digits == 0 ? Double.NaN : negative ? -value : value;
    }

    private static double slowly(byte[] bytes, int start, int end) {
        if (end - start > LONGEST) {
            return Double.NaN;
        }
        String text = new String(bytes, start, end - start, StandardCharsets.ISO_8859_1);
        boolean plain = text.matches("[-+]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][-+]?\\d+)?");
        double value = plain ? Double.parseDouble(text.replace(',', '.')) : Double.NaN;
        return Double.isFinite(value) ? value : Double.NaN;
    }
}
