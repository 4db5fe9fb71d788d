package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts the stations of one placement where their colour changes abruptly, and tells a steady drift from such a step:
 * of one colour, one step and one straight line, the one that explains most is taken, if it explains more than chance
 * does; a step parts the row in two, and both parts are looked at again.
 */
final class Changes {

    /** Fewer stations than this show no drift: any two lie on a line, three nearly so. */
    private static final int FEWEST_FOR_A_DRIFT = 4;

    /** A run of stations with the line that fits it. */
    record Part(List<Station> stations, Line line) {
    }

    private final Noise noise;
    private final double threshold;

    /** @param falseAlarms the share of rows without a change that may show one, for each place tried */
    Changes(Noise noise, double falseAlarms) {
        this.noise = noise;
        this.threshold = Significance.exceededIn(falseAlarms, noise.degrees());
    }

    List<Part> part(List<Station> row) {
        List<Part> parts = new ArrayList<>();
        part(row, parts);
        return parts;
    }

    private void part(List<Station> row, List<Part> parts) {
        int split = bestSplit(row);
        double step = split > 0 ? gainOfSplit(row, split) : 0;
        Line line = row.size() >= FEWEST_FOR_A_DRIFT ? new LineFit(row, noise).sloping() : null;
        double slope = line == null ? 0 : Significance.of(line.uPerM(), line.vPerM(), line.slopeCovariance());
        if (Math.max(step, slope) <= threshold) {
            parts.add(new Part(row, new LineFit(row, noise).level()));
        } else if (slope >= step) {
            parts.add(new Part(row, line));
        } else {
            part(row.subList(0, split), parts);
            part(row.subList(split, row.size()), parts);
        }
    }

    private int bestSplit(List<Station> row) {
        int best = 0;
        double most = 0;
        for (int i = 1; i < row.size(); i++) {
            double gain = gainOfSplit(row, i);
            if (gain > most) {
                most = gain;
                best = i;
            }
        }
        return best;
    }

    /** How much better two colours explain the row than one does: the squared difference over its noise. */
    private double gainOfSplit(List<Station> row, int split) {
        Line before = new LineFit(row.subList(0, split), noise).level();
        Line after = new LineFit(row.subList(split, row.size()), noise).level();
        Covariance both = before.centreCovariance().plus(after.centreCovariance());
        return Significance.of(after.centre().u() - before.centre().u(), after.centre().v() - before.centre().v(), both);
    }
}
