package covewalk.verdict.evidence;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the reference spots in a log, and their visits. */
final class ReferenceSpots {

    /** Walk readings after the last visit from which on the end counts as not seen (common practice, no source). */
    private static final int MOST_AFTER = 30;

    private static final class Visits {
        private final List<Reading> readings = new ArrayList<>();
        private final List<Integer> order = new ArrayList<>();
        private int visits;
        private int walkAtLast = -1;

        void add(Reading reading, int place, int walked) {
            visits += walked == walkAtLast ? 0 : 1;
            walkAtLast = walked;
            readings.add(reading);
            order.add(place);
        }
    }

    private final Map<Spot, Visits> spots = new LinkedHashMap<>();
    private final Map<String, Integer> walked = new HashMap<>();

    private ReferenceSpots(List<Reading> standing) {
        for (int i = 0; i < standing.size(); i++) {
            Reading reading = standing.get(i);
            if (reading.role() == Role.WALK) {
                walked.merge(reading.setUp(), 1, Integer::sum);
            } else if (reading.role() == Role.REFERENCE) {
                spots.computeIfAbsent(Spot.of(reading), spot -> new Visits())
                        .add(reading, i, walked.getOrDefault(reading.setUp(), 0));
            }
        }
    }

    /** Spots read twice or more, in the order of the log. */
    static List<ReferenceSpot> of(Survey survey, List<Reading> standing) {
        ReferenceSpots found = new ReferenceSpots(standing);
        List<ReferenceSpot> spots = new ArrayList<>();
        found.spots.forEach((spot, visits) -> survey.setUp(spot.setUp()).flatMap(setUp -> found.spot(spot, visits, setUp))
                .ifPresent(spots::add));
        return spots;
    }

    private Optional<ReferenceSpot> spot(Spot spot, Visits visits, SetUp setUp) {
        List<TakenAt> times = visits.readings.stream().flatMap(reading -> TakenAt.of(reading.takenAt()).stream()).toList();
        boolean timed = times.size() == visits.readings.size() && times.stream().map(TakenAt::zoned).distinct().count() == 1;
        double[] at = timed ? times.stream().mapToDouble(TakenAt::minutes).toArray()
                : visits.order.stream().mapToDouble(Integer::doubleValue).toArray();
        double from = least(at);
        double to = -least(negated(at));
        if (!(to > from)) {
            return Optional.empty();
        }
        List<UvPrime> colours = visits.readings.stream().map(reading -> reading.colour().orElseThrow().toUvPrime()).toList();
        Covariance digits = visits.readings.stream().map(reading -> reading.colour().orElseThrow().digits())
                .reduce(Covariance.ZERO, Covariance::plus).times(1.0 / at.length);
        boolean atEnd = walked.getOrDefault(spot.setUp(), 0) - visits.walkAtLast <= MOST_AFTER;
        return Optional.of(new ReferenceSpot(spot, visits.visits, atEnd, timed, from, to, timed && times.get(0).zoned(), mean(colours),
                Slope.of(at, colours.stream().mapToDouble(UvPrime::u).toArray()),
                Slope.of(at, colours.stream().mapToDouble(UvPrime::v).toArray()), digits, setUp.repeatabilityUv()));
    }

    private static UvPrime mean(List<UvPrime> colours) {
        return new UvPrime(colours.stream().mapToDouble(UvPrime::u).average().orElseThrow(),
                colours.stream().mapToDouble(UvPrime::v).average().orElseThrow());
    }

    private static double least(double[] numbers) {
        double least = numbers[0];
        for (double number : numbers) {
            least = Math.min(least, number);
        }
        return least;
    }

    private static double[] negated(double[] numbers) {
        double[] negated = numbers.clone();
        for (int i = 0; i < negated.length; i++) {
            negated[i] = -negated[i];
        }
        return negated;
    }
}
