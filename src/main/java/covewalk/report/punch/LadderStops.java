package covewalk.report.punch;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Groups items into stops, so that a person climbs as few times as possible. A length without light may be a corner or
 * a beam, so nobody is sent to reach across one.
 */
public final class LadderStops {

    /** So far to either side one works from a ladder or platform, m (common practice, no source). */
    public static final double REACH_M = 0.6;

    private record Spot(PunchItem item, double atM) {
    }

    private final List<LadderStop> stops = new ArrayList<>();
    private final List<Spot> together = new ArrayList<>();

    private LadderStops() {
    }

    /** @param items in walking order */
    public static List<LadderStop> of(List<PunchItem> items) {
        LadderStops found = new LadderStops();
        for (int from = 0, to; from < items.size(); from = to) {
            Cove cove = items.get(from).cove();
            to = from;
            while (to < items.size() && items.get(to).cove().equals(cove)) {
                to++;
            }
            found.along(cove, items.subList(from, to));
        }
        return found.stops;
    }

    private void along(Cove cove, List<PunchItem> items) {
        for (Spot spot : unrolled(cove, items)) {
            if (!together.isEmpty() && !reachable(cove, together.get(0).atM(), spot.atM())) {
                close(cove);
            }
            together.add(spot);
        }
        close(cove);
    }

    /** On a closed cove what lies within reach behind the first item, round the end, comes before it. */
    private static List<Spot> unrolled(Cove cove, List<PunchItem> items) {
        double first = items.get(0).fault().positionM();
        return items.stream().map(item -> {
            double at = item.fault().positionM();
            double before = at - cove.lengthM();
            return new Spot(item, cove.closed() && at > first && first - before <= 2 * REACH_M ? before : at);
        }).sorted(Comparator.comparingDouble(Spot::atM)).toList();
    }

    private static boolean reachable(Cove cove, double fromM, double toM) {
        return toM - fromM <= 2 * REACH_M && gaps(cove).noneMatch(gap -> fromM <= gap[0] && toM >= gap[1]);
    }

    private static Stream<double[]> gaps(Cove cove) {
        List<Placement> row = cove.placements();
        List<double[]> gaps = new ArrayList<>();
        for (int i = 1; i < row.size(); i++) {
            if (row.get(i).fromM() > row.get(i - 1).toM()) {
                gaps.add(new double[] {row.get(i - 1).toM(), row.get(i).fromM()});
            }
        }
        return gaps.stream();
    }

    private void close(Cove cove) {
        double middle = (together.get(0).atM() + together.get(together.size() - 1).atM()) / 2;
        stops.add(new LadderStop(stops.size() + 1, cove, middle < 0 ? middle + cove.lengthM() : middle,
                together.stream().map(Spot::item).sorted(Comparator.comparingInt(PunchItem::number)).toList()));
        together.clear();
    }
}
