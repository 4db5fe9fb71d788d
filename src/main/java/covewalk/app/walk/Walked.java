package covewalk.app.walk;

import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.StandingReadings;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was read so far, as it stands after corrections and withdrawals, in the order of reading. */
final class Walked {

    /** A reading this near to a proposed station was taken there, m. */
    static final double SAME_PLACE_M = 0.1;

    private final List<Reading> standing;
    /** Walk readings by their coves: a survey may have hundreds of coves, and each is asked about often. */
    private final Map<String, List<Reading>> byCove;

    private Walked(List<Reading> standing) {
        this.standing = standing;
        byCove = standing.stream().filter(reading -> reading.role() == Role.WALK).collect(Collectors.groupingBy(Reading::cove));
    }

    static Walked of(List<Reading> log) {
        return new Walked(StandingReadings.of(log));
    }

    List<Reading> readings() {
        return standing;
    }

    Optional<Reading> last() {
        return last(reading -> true);
    }

    Optional<Reading> last(Predicate<Reading> which) {
        for (int i = standing.size() - 1; i >= 0; i--) {
            if (which.test(standing.get(i))) {
                return Optional.of(standing.get(i));
            }
        }
        return Optional.empty();
    }

    /** All of one station: a position, read with one set-up. */
    List<Reading> station(String cove, double positionM, String setUp) {
        return walk(cove, setUp).filter(reading -> reading.positionM().value() == positionM).toList();
    }

    /** The station read last in this cove, other than the one at {@code positionM}; empty before there is one. */
    List<Reading> lastStation(String cove, double positionM, String setUp) {
        return last(reading -> isWalk(reading, cove, setUp) && reading.positionM().value() != positionM)
                .map(reading -> station(cove, reading.positionM().value(), setUp)).orElse(List.of());
    }

    long stations(String cove) {
        return byCove.getOrDefault(cove, List.of()).stream().mapToDouble(reading -> reading.positionM().value()).distinct().count();
    }

    Stream<Reading> walk(String cove, String setUp) {
        return byCove.getOrDefault(cove, List.of()).stream().filter(reading -> reading.setUp().equals(setUp));
    }

    private static boolean isWalk(Reading reading, String cove, String setUp) {
        return reading.role() == Role.WALK && reading.cove().equals(cove) && reading.setUp().equals(setUp);
    }
}
