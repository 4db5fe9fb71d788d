package covewalk.app.walk;

import covewalk.survey.Cove;
import covewalk.verdict.plan.CovePlan;
import covewalk.verdict.plan.Stop;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The stations of one cove in the order of walking, and how often each is read; {@code read} is where readings were taken, m. */
final class Route {

    /** Between stations where no plan helps, m (common practice, no source: 0.5 to 1 m). */
    static final double USUAL_INTERVAL_M = 0.5;

    /** Floating positions this near are the same, m. */
    private static final double SAME_M = 1e-6;

    /**
     * One station to read.
     *
     * @param readings how many there should be in all
     */
    record Place(double positionM, int readings) {
    }

    private final List<Place> places;
    private final boolean backwards;
    private final Set<Place> skipped = new HashSet<>();

    private Route(List<Place> places, boolean backwards) {
        Comparator<Place> along = Comparator.comparingDouble(Place::positionM);
        this.places = places.stream().sorted(backwards ? along.reversed() : along).toList();
        this.backwards = backwards;
    }

    /** As planned, where the plan has stations for this cove; else one every so many metres. */
    static Route of(Cove cove, Optional<CovePlan> plan, double intervalM, boolean backwards) {
        List<Place> planned = planned(plan);
        return new Route(planned.isEmpty() ? every(intervalM, cove) : planned, backwards);
    }

    /** What is still to be read by a plan that knows of the readings there are. */
    static Route more(CovePlan plan, List<Double> read, boolean backwards) {
        Route left = new Route(planned(Optional.of(plan)), backwards);
        Map<Place, Integer> there = left.counts(read);
        return new Route(left.places.stream()
                .map(place -> new Place(place.positionM(), place.readings() + there.getOrDefault(place, 0))).toList(), backwards);
    }

    private static List<Place> planned(Optional<CovePlan> plan) {
        return plan.map(CovePlan::stops).orElse(List.of()).stream().filter(stop -> stop.kind() == Stop.Kind.WALK)
                .map(stop -> new Place(stop.positionM(), stop.readings())).toList();
    }

    private static List<Place> every(double intervalM, Cove cove) {
        List<Place> places = new ArrayList<>();
        int most = (int) Math.max(1, Math.floor(cove.lengthM() / intervalM + SAME_M));
        double first = (cove.lengthM() - (most - 1) * intervalM) / 2;
        for (int i = 0; i < most; i++) {
            places.add(new Place(Math.rint((first + i * intervalM) * 100) / 100, 1));
        }
        return places;
    }

    /** The same stations in the other order; what was skipped is open again. */
    Route turned(boolean fromTheFarEnd) {
        return new Route(places, fromTheFarEnd);
    }

    List<Place> places() {
        return places;
    }

    /** The station at a position, where there is one. */
    Optional<Place> at(double positionM) {
        return places.stream().filter(place -> Math.abs(place.positionM() - positionM) < SAME_M).findFirst();
    }

    /** The first station from the start on that still lacks readings and was not skipped. */
    Optional<Place> firstOpen(List<Double> read) {
        return open(read).findFirst();
    }

    /** The next one behind a position that lacks readings; where none is left there, the first that does. */
    Optional<Place> nextOpen(double positionM, List<Double> read) {
        return open(read).filter(place -> isBehind(place, positionM)).findFirst().or(() -> firstOpen(read));
    }

    private Stream<Place> open(List<Double> read) {
        Map<Place, Integer> there = counts(read);
        return places.stream().filter(place -> !skipped.contains(place) && place.readings() > there.getOrDefault(place, 0));
    }

    /** How many readings each station has: a reading belongs to the nearest one, where that is near enough. */
    private Map<Place, Integer> counts(List<Double> read) {
        Map<Place, Integer> counts = new HashMap<>();
        for (double positionM : read) {
            places.stream().min(Comparator.comparingDouble(place -> Math.abs(place.positionM() - positionM)))
                    .filter(place -> Math.abs(place.positionM() - positionM) <= Walked.SAME_PLACE_M)
                    .ifPresent(place -> counts.merge(place, 1, Integer::sum));
        }
        return counts;
    }

    /** The station just before a position, read or not. */
    Optional<Place> before(double positionM) {
        return places.stream().filter(place -> !isBehind(place, positionM) && Math.abs(place.positionM() - positionM) >= SAME_M)
                .reduce((one, later) -> later);
    }

    private boolean isBehind(Place place, double positionM) {
        return backwards ? place.positionM() < positionM - SAME_M : place.positionM() > positionM + SAME_M;
    }

    /** How many readings a station still lacks, 0 or less where it has them. */
    int left(Place place, List<Double> read) {
        return place.readings() - counts(read).getOrDefault(place, 0);
    }

    /** Not proposed again on this walk. */
    void skip(double positionM) {
        at(positionM).ifPresent(skipped::add);
    }

    /** How many of those have no reading at all. */
    int skipped(List<Double> read) {
        Map<Place, Integer> there = counts(read);
        return (int) skipped.stream().filter(place -> !there.containsKey(place)).count();
    }
}
