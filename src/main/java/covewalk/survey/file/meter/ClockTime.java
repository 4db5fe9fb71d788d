package covewalk.survey.file.meter;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a time of day, on the clock of 24 hours or of 12. */
final class ClockTime {

    private static final Pattern TIME = Pattern.compile(
            "(am|pm|\u5348\u524d|\u5348\u5f8c|\u4e0a\u5348|\u4e0b\u5348)?(\\d{1,2})[:h\u6642\u65f6](\\d{2})(?:[:\u5206](\\d{2})(?:[.,](\\d{1,9}))?)?\u79d2?(am|pm|uhr)?");
    private static final DateTimeFormatter ISO = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private ClockTime() {
    }

    static Optional<String> iso(String written) {
        String plain = written.toLowerCase(Locale.ROOT).replaceAll("[\\s\u00a0\u202f]", "").replace("a.m.", "am").replace("p.m.", "pm");
        Matcher parts = TIME.matcher(plain);
        return parts.matches() ? iso(parts) : Optional.empty();
    }

    private static Optional<String> iso(Matcher parts) {
        int hour = Integer.parseInt(parts.group(2));
        String half = parts.group(1) != null ? parts.group(1) : parts.group(6) == null ? "" : parts.group(6);
        boolean twelve = !half.isEmpty() && !half.equals("uhr");
        if (twelve && (hour < 1 || hour > 12)) {
            return Optional.empty();
        }
        boolean afternoon = half.equals("pm") || half.equals("\u5348\u5f8c") || half.equals("\u4e0b\u5348");
        int second = parts.group(4) == null ? 0 : Integer.parseInt(parts.group(4));
        try {
            int full = twelve ? hour % 12 + (afternoon ? 12 : 0) : hour;
            return Optional.of(LocalTime.of(full, Integer.parseInt(parts.group(3)), second).format(ISO));
        } catch (DateTimeException noSuchTime) {
            return Optional.empty();
        }
    }
}
