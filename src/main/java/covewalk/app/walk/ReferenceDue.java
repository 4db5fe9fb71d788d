package covewalk.app.walk;

import covewalk.app.text.Texts;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/**
 * When the reference spot is to be read again: after so many readings, or so many minutes.
 *
 * @param first whether it was never read with this set-up
 * @param readings walk readings since the last visit
 * @param minutes since then; 0 where a time is missing
 */
record ReferenceDue(boolean first, int readings, long minutes) {

    /** Common practice, no source: every 20 to 30 readings or half an hour. */
    static final int READINGS = 25;
    static final int MINUTES = 30;

    /** @param now by the clock on the wall */
    static ReferenceDue of(Walked walked, String setUp, LocalDateTime now) {
        Optional<Reading> last = walked.last(reading -> reading.role() == Role.REFERENCE && reading.setUp().equals(setUp));
        int since = 0;
        for (int i = walked.readings().size() - 1; i >= 0 && walked.readings().get(i) != last.orElse(null); i--) {
            Reading reading = walked.readings().get(i);
            since += reading.role() == Role.WALK && reading.setUp().equals(setUp) ? 1 : 0;
        }
        return new ReferenceDue(last.isEmpty(), since, last.flatMap(ReferenceDue::takenAt)
                .map(then -> Math.max(0, Duration.between(then, now).toMinutes())).orElse(0L));
    }

    private static Optional<LocalDateTime> takenAt(Reading reading) {
        try {
            return reading.takenAt().isEmpty() ? Optional.empty()
                    : Optional.of(LocalDateTime.from(DateTimeFormatter.ISO_DATE_TIME.parse(reading.takenAt().replace(' ', 'T'))));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }

    boolean isDue() {
        return first || readings >= READINGS || minutes >= MINUTES;
    }

    String inWords(Texts texts) {
        if (first) {
            return texts.get("reference.first");
        }
        if (readings >= READINGS) {
            return texts.get("reference.due.readings", texts.numbers().fixed(readings, 0));
        }
        return minutes >= MINUTES ? ago(texts)
                : texts.get("reference.later", texts.numbers().fixed(READINGS - readings, 0), texts.numbers().fixed(MINUTES - minutes, 0));
    }

    /** In the unit that a person would say it in. */
    private String ago(Texts texts) {
        if (minutes < 2 * 60) {
            return texts.get("reference.due.minutes", texts.numbers().fixed(minutes, 0));
        }
        long hours = minutes / 60;
        return hours < 2 * 24 ? texts.get("reference.due.hours", texts.numbers().fixed(hours, 0))
                : texts.get("reference.due.days", texts.numbers().fixed(hours / 24, 0));
    }
}
