package covewalk.survey.label;

import java.util.Optional;

/** The number of a trade item, in its 14 digits. */
final class Gtin {

    private static final int DIGITS = 14;

    private Gtin() {
    }

    /** The 14 digits of one written with 8, 12, 13 or 14; empty for what is none. The check digit is not looked at. */
    static Optional<String> of(String digits) {
        boolean length = digits.length() == 8 || digits.length() >= 12 && digits.length() <= DIGITS;
        return length && digits.chars().allMatch(c -> c >= '0' && c <= '9')
                ? Optional.of("0".repeat(DIGITS - digits.length()) + digits) : Optional.empty();
    }

    /**
     * Whether the last digit is the one that the others ask for: weights 3 and 1 by turns from the right, and up to the
     * next ten (GS1 General Specifications, check digit calculations).
     */
    static boolean checks(String gtin) {
        int sum = 0;
        for (int i = 0; i < gtin.length(); i++) {
            int fromTheRight = gtin.length() - 1 - i;
            sum += (gtin.charAt(i) - '0') * (fromTheRight % 2 == 0 ? 1 : 3);
        }
        return sum % 10 == 0;
    }
}
