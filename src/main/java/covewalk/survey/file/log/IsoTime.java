package covewalk.survey.file.log;

/** Whether a text looks like a date and time of ISO 8601: {@code 2026-10-05T18:30}, with seconds and zone if you like. */
final class IsoTime {

    private static final String SHAPE = "dddd-dd-ddtdd:dd";

    private IsoTime() {
    }

    static boolean looksRight(String text) {
        if (text.length() < SHAPE.length()) {
            return false;
        }
        for (int i = 0; i < SHAPE.length(); i++) {
            if (!fits(SHAPE.charAt(i), text.charAt(i))) {
                return false;
            }
        }
        return within(text, 5, 1, 12) && within(text, 8, 1, 31) && within(text, 11, 0, 24) && within(text, 14, 0, 59)
                && zone(text, seconds(text, SHAPE.length()));
    }

    private static boolean fits(char shape, char c) {
        return switch (shape) {
            case 'd' -> isDigit(c);
            case 't' -> c == 'T' || c == 't' || c == ' ';
            default -> c == shape;
        };
    }

    private static boolean within(String text, int at, int least, int most) {
        int number = (text.charAt(at) - '0') * 10 + text.charAt(at + 1) - '0';
        return number >= least && number <= most;
    }

    /** Skips {@code :ss} and a fraction. */
    private static int seconds(String text, int start) {
        int at = start;
        if (at < text.length() && (text.charAt(at) == ':' || text.charAt(at) == '.')) {
            do {
                at++;
            } while (at < text.length() && (isDigit(text.charAt(at)) || text.charAt(at) == '.' || text.charAt(at) == ','));
        }
        return at;
    }

    private static boolean zone(String text, int start) {
        int left = text.length() - start;
        if (left == 0 || left == 1 && (text.charAt(start) == 'Z' || text.charAt(start) == 'z')) {
            return true;
        }
        boolean sign = text.charAt(start) == '+' || text.charAt(start) == '-';
        return sign && (left == 3 || left == 5 || left == 6) && text.chars().skip(start + 1L)
                .allMatch(c -> isDigit((char) c) || c == ':');
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
