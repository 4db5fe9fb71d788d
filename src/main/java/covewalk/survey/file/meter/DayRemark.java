package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/** Finds readings that were taken on another day than the visit: a meter's memory often holds those of earlier walks too. */
final class DayRemark {

    /** A walk that begins in the evening may end after midnight (common practice, no source: coves are read in the dark). */
    private static final LocalTime NIGHT_ENDS = LocalTime.NOON;

    private final LocalDate visit;

    DayRemark(LocalDate visit) {
        this.visit = visit;
    }

    /** One warning for all of them; empty where each was taken on the visit's day or in the night after, or has no time. */
    Optional<Problem> of(List<Reading> readings) {
        List<LocalDate> others = readings.stream().flatMap(reading -> time(reading).stream())
                .filter(time -> !isOfTheVisit(time)).map(LocalDateTime::toLocalDate).sorted().toList();
        return others.isEmpty() ? Optional.empty()
                : Optional.of(Problem.warning("import.other-day", others.size(), readings.size(), visit, others.get(0), others.get(others.size() - 1)));
    }

    private boolean isOfTheVisit(LocalDateTime time) {
        boolean nightAfter = time.toLocalDate().equals(visit.plusDays(1)) && time.toLocalTime().isBefore(NIGHT_ENDS);
        return time.toLocalDate().equals(visit) || nightAfter;
    }

    /** By the clock on the site, also where an offset from UTC stands behind it. */
    private static Optional<LocalDateTime> time(Reading reading) {
        try {
            return Optional.of(LocalDateTime.parse(reading.takenAt(), DateTimeFormatter.ISO_DATE_TIME));
        } catch (DateTimeParseException none) {
            return Optional.empty();
        }
    }
}
