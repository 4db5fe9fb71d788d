package covewalk.verdict.evidence;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Optional;

/**
 * When a reading was taken.
 *
 * @param minutes since 1970 began, of the clock on the wall where no zone was written
 * @param zoned whether a zone was written: times with and without one are not compared
 */
record TakenAt(double minutes, boolean zoned) {

    private static final DateTimeFormatter ISO = DateTimeFormatter.ISO_DATE_TIME;

    /** Empty where nothing was written, or no time of ISO 8601 in its usual form. */
    static Optional<TakenAt> of(String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            TemporalAccessor time = ISO.parseBest(text.replace(' ', 'T'), OffsetDateTime::from, LocalDateTime::from);
            OffsetDateTime at = time instanceof OffsetDateTime zoned ? zoned : ((LocalDateTime) time).atOffset(ZoneOffset.UTC);
            return Optional.of(new TakenAt((at.toEpochSecond() + at.getNano() * 1e-9) / 60, time instanceof OffsetDateTime));
        } catch (DateTimeException notATime) {
            return Optional.empty();
        }
    }
}
