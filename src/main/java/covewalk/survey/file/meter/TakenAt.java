package covewalk.survey.file.meter;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads when a reading was taken, in the order of day and month that the whole file shows. */
final class TakenAt {

    /** The blank or the T between a date and a time; a date itself holds no blank. */
    private static final Pattern GAP = Pattern.compile("[\\s\u00a0\u202f]+|(?<=\\d)T(?=\\d)|,\\s*|(?<=\u65e5)(?=.)");

    private final DateOrder order;

    /** @param written every date of the file, with a time behind it or not */
    TakenAt(List<String> written) {
        order = DateOrder.of(written.stream().map(text -> GAP.split(text.strip(), 2)[0]).toList());
    }

    /** Date and time in ISO 8601, or empty where they cannot be told; a date alone is no time that a log can hold. */
    Optional<String> iso(String written) {
        String text = written.strip();
        if (isOffset(text)) {
            return Optional.of(text);
        }
        String[] parts = GAP.split(text, 2);
        Optional<LocalDate> day = order.read(parts[0]);
        if (parts.length == 1) {
            return Optional.empty();
        }
        return day.flatMap(found -> ClockTime.iso(parts[1]).map(time -> found + "T" + time));
    }

    private static boolean isOffset(String text) {
        try {
            OffsetDateTime.parse(text);
            return true;
        } catch (DateTimeParseException other) {
            return false;
        }
    }
}
