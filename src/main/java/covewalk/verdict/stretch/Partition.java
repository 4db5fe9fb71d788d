package covewalk.verdict.stretch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The best of all ways to part a row of stations into runs of one colour or one steady drift: the one that leaves
 * least unexplained, where each change and each drift has to explain more than chance does. Exact; candidates that
 * can never win are dropped on the way (the pruning of Killick, Fearnhead and Eckley, Journal of the American
 * Statistical Association 107, 2012, 1590), so that a row with changes along it takes near linear time.
 */
final class Partition {

    /** Fewer stations than this show no drift: any two lie on a line, three nearly so. */
    private static final int FEWEST_FOR_A_DRIFT = 4;

    /**
     * The places where a change may lie, as sure as 95 %, are those that explain less than the best by at most this:
     * the distribution function of the excess is the square of one less exp(-x/2) (from memory, after Siegmund 1988).
     * A change that stands out just enough to be seen was seen because noise enlarged it, and often beside its place:
     * there more is allowed (see FAINT).
     */
    private static final double RANGE_95 = -2 * Math.log(1 - Math.sqrt(0.95));

    /** So much more, of a change that explains just what it has to, and less of one that explains more (by simulation). */
    private static final double FAINT = 1.3;

    /**
     * A run of stations.
     *
     * @param from its first station
     * @param to the one after its last
     * @param earliest the earliest station that may be its first
     * @param latest the latest
     */
    record Run(int from, int to, boolean drifts, int earliest, int latest) {
    }

    private final SegmentCosts costs;
    private final int size;
    private final double penalty;

    /** @param penalty what a change, or a drift, has to explain, in units of the noise */
    Partition(List<Station> row, Noise noise, double penalty) {
        this.costs = new SegmentCosts(row, noise);
        this.size = row.size();
        this.penalty = penalty;
    }

    List<Run> best() {
        double[] least = new double[size + 1];
        int[] cameFrom = new int[size + 1];
        List<Integer> candidates = new ArrayList<>();
        for (int to = 1; to <= size; to++) {
            candidates.add(to - 1);
            least[to] = Double.POSITIVE_INFINITY;
            for (int from : candidates) {
                double cost = least[from] + cost(from, to) + (from == 0 ? 0 : penalty);
                if (cost < least[to]) {
                    least[to] = cost;
                    cameFrom[to] = from;
                }
            }
            drop(candidates, least, to);
        }
        return ranges(runs(cameFrom));
    }

    /** A run may yet turn into a drift, which costs one penalty: so much is allowed before it is dropped. */
    private void drop(List<Integer> candidates, double[] least, int to) {
        candidates.removeIf(from -> least[from] + cost(from, to) - penalty > least[to]);
    }

    private double cost(int from, int to) {
        double level = costs.level(from, to);
        return to - from < FEWEST_FOR_A_DRIFT ? level : Math.min(level, costs.line(from, to) + penalty);
    }

    private boolean drifts(int from, int to) {
        return to - from >= FEWEST_FOR_A_DRIFT && costs.line(from, to) + penalty < costs.level(from, to);
    }

    private List<Run> runs(int[] cameFrom) {
        Deque<Run> runs = new ArrayDeque<>();
        for (int to = size; to > 0; to = cameFrom[to]) {
            int from = cameFrom[to];
            runs.addFirst(new Run(from, to, drifts(from, to), from, from));
        }
        return List.copyOf(runs);
    }

    private List<Run> ranges(List<Run> runs) {
        List<Run> ranged = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            ranged.add(i == 0 ? runs.get(0) : ranged(runs.get(i - 1), runs.get(i)));
        }
        return ranged;
    }

    private Run ranged(Run before, Run after) {
        double best = unexplained(before, after, after.from());
        double most = best + RANGE_95 * (1 + FAINT * penalty / Math.max(penalty, costs.level(before.from(), after.to()) - best));
        int earliest = after.from();
        int latest = after.from();
        for (int start = before.from() + 1; start < after.to(); start++) {
            if (unexplained(before, after, start) <= most) {
                earliest = Math.min(earliest, start);
                latest = Math.max(latest, start);
            }
        }
        return new Run(after.from(), after.to(), after.drifts(), earliest, latest);
    }

    private double unexplained(Run before, Run after, int start) {
        return (before.drifts() ? costs.line(before.from(), start) : costs.level(before.from(), start))
                + (after.drifts() ? costs.line(start, after.to()) : costs.level(start, after.to()));
    }
}
