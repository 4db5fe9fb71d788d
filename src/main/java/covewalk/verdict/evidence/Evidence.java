package covewalk.verdict.evidence;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.stretch.ColourOf;
import covewalk.verdict.stretch.Station;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a log says about its own weight, and the colours its readings are judged by. Light that is there with the cove
 * off is always taken off; drift only when asked, and only where a reference spot shows it and has times.
 */
public final class Evidence implements ColourOf {

    private final Survey survey;
    private final List<Reading> standing;
    private final List<ReferenceSpot> spots;
    private final DarkLight dark;
    private final Map<String, ReferenceSpot> corrected = new HashMap<>();

    /** @param standing the readings that stand, in the order of the log */
    public Evidence(Survey survey, List<Reading> standing, boolean correctDrift) {
        this.survey = survey;
        this.standing = standing;
        this.spots = ReferenceSpots.of(survey, standing);
        this.dark = new DarkLight(standing);
        if (correctDrift) {
            spots.stream().filter(spot -> spot.drifts() && spot.timed())
                    .sorted(Comparator.comparingInt(ReferenceSpot::visits).reversed())
                    .forEach(spot -> corrected.putIfAbsent(spot.spot().setUp(), spot));
        }
    }

    /** Spots read again after a while, whatever they show. */
    public List<ReferenceSpot> spots() {
        return spots;
    }

    /** By which spot the drift of a set-up's readings was corrected; empty where it was not. */
    public Optional<ReferenceSpot> correctedBy(String setUp) {
        return Optional.ofNullable(corrected.get(setUp));
    }

    @Override
    public UvPrime of(Reading reading) {
        UvPrime colour = dark.of(reading);
        ReferenceSpot spot = corrected.get(reading.setUp());
        if (spot == null) {
            return colour;
        }
        return time(reading, spot).map(at -> spot.corrected(colour, at.minutes())).orElse(colour);
    }

    /** What the correction of a drift leaves open of the difference between two sets of stations of one set-up. */
    public Covariance leftOpen(Collection<Station> one, Collection<Station> other) {
        ReferenceSpot spot = one.isEmpty() ? null : corrected.get(one.iterator().next().setUp());
        if (spot == null) {
            return Covariance.ZERO;
        }
        OptionalDouble from = meanTime(one, spot);
        OptionalDouble to = meanTime(other, spot);
        return from.isPresent() && to.isPresent() ? spot.uncertainty(to.getAsDouble() - from.getAsDouble()) : Covariance.ZERO;
    }

    /** What it leaves open of the colour of such stations itself: nothing half way through the drift, where none is taken off. */
    public Covariance leftOpen(Collection<Station> stations) {
        ReferenceSpot spot = stations.isEmpty() ? null : corrected.get(stations.iterator().next().setUp());
        OptionalDouble at = spot == null ? OptionalDouble.empty() : meanTime(stations, spot);
        return at.isPresent() ? spot.uncertainty(at.getAsDouble() - (spot.from() + spot.to()) / 2) : Covariance.ZERO;
    }

    private static OptionalDouble meanTime(Collection<Station> stations, ReferenceSpot spot) {
        return stations.stream().flatMap(station -> station.readings().stream()).flatMap(reading -> time(reading, spot).stream())
                .mapToDouble(TakenAt::minutes).average();
    }

    private static Optional<TakenAt> time(Reading reading, ReferenceSpot spot) {
        return TakenAt.of(reading.takenAt()).filter(at -> at.zoned() == spot.zoned());
    }

    /** One for each set-up that was walked with, in the survey's order. */
    public List<SetUpTally> tallies() {
        Map<String, Counter> counters = new HashMap<>();
        survey.setUps().forEach(setUp -> counters.put(setUp.id(), new Counter(setUp)));
        standing.stream().filter(reading -> reading.role() == Role.WALK && counters.containsKey(reading.setUp()))
                .forEach(reading -> counters.get(reading.setUp()).count(reading));
        return survey.setUps().stream().map(setUp -> counters.get(setUp.id()).tally()).filter(tally -> tally.walked() > 0).toList();
    }

    private final class Counter {
        private final SetUp setUp;
        private final ReferenceSpot spot;
        private int walked;
        private int belowRange;
        private int foreign;
        private double largestShare;
        private int swamped;
        private int withoutLux;
        private int inTime;
        private int withoutTime;

        Counter(SetUp setUp) {
            this.setUp = setUp;
            this.spot = corrected.get(setUp.id());
        }

        void count(Reading reading) {
            walked++;
            belowRange += isBelowRange(reading) ? 1 : 0;
            double share = dark.share(reading);
            largestShare = Math.max(largestShare, share);
            foreign += dark.subtracted(reading) ? 1 : 0;
            swamped += share > DarkLight.MATTERS && !dark.subtracted(reading) ? 1 : 0;
            withoutLux += dark.unknown(reading) ? 1 : 0;
            boolean timed = spot != null && time(reading, spot).isPresent();
            inTime += timed ? 1 : 0;
            withoutTime += spot != null && !timed ? 1 : 0;
        }

        private boolean isBelowRange(Reading reading) {
            return setUp.leastLux().isPresent() && reading.lux().isPresent()
                    && reading.lux().get().value() < setUp.leastLux().getAsDouble();
        }

        SetUpTally tally() {
            return new SetUpTally(setUp.id(), walked, belowRange, foreign, largestShare, swamped, withoutLux, inTime, withoutTime);
        }
    }
}
