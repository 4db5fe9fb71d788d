package covewalk.survey.file.meter;

import covewalk.survey.Reading;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedPair;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The readings of a log by cove, place, time and values. A file that was saved again by a spreadsheet has other separators and
 * fewer zeros, and still holds the same readings. Without a time nothing tells a reading from its repeat, so none is known then.
 */
final class KnownReadings {

    private record Taken(String cove, long positionMm, String time, List<List<Double>> colour) {
    }

    private final Map<Taken, Integer> left = new HashMap<>();

    KnownReadings(Collection<Reading> log) {
        log.forEach(reading -> taken(reading).ifPresent(taken -> left.merge(taken, 1, Integer::sum)));
    }

    /** Whether the log has this reading. Each reading of the log answers for one only: repeats within a minute may come out alike. */
    boolean takeOne(Reading reading) {
        Optional<Taken> one = taken(reading).filter(taken -> left.getOrDefault(taken, 0) > 0);
        one.ifPresent(taken -> left.merge(taken, -1, Integer::sum));
        return one.isPresent();
    }

    private static Optional<Taken> taken(Reading reading) {
        return reading.colour().filter(colour -> !reading.takenAt().isEmpty())
                .map(colour -> new Taken(reading.cove(), Math.round(reading.positionM().value() * 1000), time(reading.takenAt()), values(colour)));
    }

    /** 18:30 and 18:30:00 are one time. */
    private static String time(String written) {
        try {
            return LocalDateTime.parse(written).toString();
        } catch (DateTimeParseException other) {
            return written;
        }
    }

    private static List<List<Double>> values(TypedColour colour) {
        return Stream.of(colour.cctDuv(), colour.xy(), colour.uvPrime()).map(pair -> pair.map(KnownReadings::values).orElse(List.of())).toList();
    }

    private static List<Double> values(TypedPair pair) {
        return List.of(pair.first().value() + 0.0, pair.second().value() + 0.0); // a Duv of -0.0000 is one of 0
    }
}
