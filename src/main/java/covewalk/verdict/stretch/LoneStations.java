package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds stations off their two nearest neighbours where these agree with each other: a wild reading, dirt, a damaged
 * spot. They are set aside before anything else, so that one wild reading moves no stretch.
 */
final class LoneStations {

    private final Noise noise;
    private final double threshold;

    /** @param falseAlarms the share of rows without a lone station that may show one, for each station tried */
    LoneStations(Noise noise, double falseAlarms) {
        this.noise = noise;
        this.threshold = Significance.exceededIn(falseAlarms, noise.degrees());
    }

    /** The lone ones, the farthest off first; the rest stays in {@code row}, which is changed. */
    List<Station> takeFrom(List<Station> row) {
        List<Station> lone = new ArrayList<>();
        for (int worst = worstIn(row); worst >= 0; worst = worstIn(row)) {
            lone.add(row.remove(worst));
        }
        return lone;
    }

    private int worstIn(List<Station> row) {
        int worst = -1;
        double farthest = threshold;
        for (int i = 0; i < row.size() && row.size() > 2; i++) {
            double off = offItsNeighbours(row, i);
            if (off > farthest) {
                farthest = off;
                worst = i;
            }
        }
        return worst;
    }

    /** 0 where the neighbours do not agree. At the ends the next two are the neighbours. */
    private double offItsNeighbours(List<Station> row, int i) {
        int one = i == 0 ? 1 : i - 1;
        int other = i == 0 ? 2 : i == row.size() - 1 ? i - 2 : i + 1;
        Station a = row.get(one);
        Station b = row.get(other);
        Covariance both = noise.of(a).plus(noise.of(b));
        if (Significance.of(a.mean().u() - b.mean().u(), a.mean().v() - b.mean().v(), both) > threshold) {
            return 0;
        }
        UvPrime here = row.get(i).mean();
        double du = here.u() - (a.mean().u() + b.mean().u()) / 2;
        double dv = here.v() - (a.mean().v() + b.mean().v()) / 2;
        return Significance.of(du, dv, noise.of(row.get(i)).plus(both.times(0.25)));
    }
}
