package covewalk.verdict.plan;

import covewalk.survey.Placement;
import covewalk.survey.SetUp;
import covewalk.verdict.CoveJudgement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The stops along one cove in the order of reading. */
final class Walk {

    /** Readings between two visits to the reference spot (common practice, no source: 20 to 30, or half an hour). */
    private static final int BETWEEN_REFERENCES = 25;

    /** A station read this near to a planned one counts for it, or for the nearest of several, m. */
    private static final double SAME_PLACE_M = 0.1;

    private final CoveJudgement cove;
    private final SetUp setUp;
    private final Map<Placement, Layout> layouts;
    private final List<Placement> toRead;
    private final List<Stop> stops = new ArrayList<>();

    Walk(CoveJudgement cove, SetUp setUp, Map<Placement, Layout> layouts, List<Placement> toRead) {
        this.cove = cove;
        this.setUp = setUp;
        this.layouts = layouts;
        this.toRead = toRead;
    }

    /** Dark first, then the reference spot, the stations from the datum on, the reference spot now and then and at the end. */
    List<Stop> stops() {
        List<Stop> stations = stations();
        if (stations.isEmpty()) {
            return List.of();
        }
        Placement first = cove.cove().placements().get(0);
        double spot = Math.rint((first.fromM() + first.toM()) / 2 * 100) / 100;
        Stop reference = new Stop(Stop.Kind.REFERENCE, spot, first.reel(), 1);
        stops.add(new Stop(Stop.Kind.DARK, spot, first.reel(), 1));
        stops.add(reference);
        int since = 0;
        for (Stop station : stations) {
            if (since + station.readings() > BETWEEN_REFERENCES) {
                stops.add(reference);
                since = 0;
            }
            stops.add(station);
            since += station.readings();
        }
        stops.add(reference);
        return stops;
    }

    private List<Stop> stations() {
        Map<Double, Integer> read = alreadyRead();
        List<Stop> stations = new ArrayList<>();
        for (Placement placement : toRead) {
            Layout layout = layouts.get(placement);
            for (int i = 0; layout != null && i < layout.positions().size(); i++) {
                double at = layout.positions().get(i);
                int left = layout.readingsAt(i) - read.getOrDefault(at, 0);
                if (left > 0) {
                    stations.add(new Stop(Stop.Kind.WALK, at, placement.reel(), left));
                }
            }
        }
        return stations;
    }

    /** Readings by planned position: near the ends several lie within reach of one reading, which counts once. */
    private Map<Double, Integer> alreadyRead() {
        NavigableSet<Double> planned = new TreeSet<>();
        layouts.values().forEach(layout -> planned.addAll(layout.positions()));
        Map<Double, Integer> read = new HashMap<>();
        cove.stations().stream().filter(station -> station.setUp().equals(setUp.id()))
                .forEach(station -> nearest(planned, station.positionM())
                        .ifPresent(at -> read.merge(at, station.readings().size(), Integer::sum)));
        return read;
    }

    private static Optional<Double> nearest(NavigableSet<Double> planned, double positionM) {
        return Stream.of(planned.floor(positionM), planned.ceiling(positionM)).filter(Objects::nonNull)
                .filter(at -> Math.abs(at - positionM) <= SAME_PLACE_M)
                .min(Comparator.comparingDouble(at -> Math.abs(at - positionM)));
    }
}
