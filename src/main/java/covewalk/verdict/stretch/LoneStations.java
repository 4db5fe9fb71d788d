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
        List<Covariance> own = new ArrayList<>(row.size());
        row.forEach(station -> own.add(noise.wholeOf(station)));
        for (int worst = worstIn(row, own); worst >= 0; worst = worstIn(row, own)) {
            lone.add(row.remove(worst));
            own.remove(worst);
        }
        return lone;
    }

    /** @param own noise of each station of the row */
    private int worstIn(List<Station> row, List<Covariance> own) {
        int worst = -1;
        double farthest = threshold;
        for (int i = 0; i < row.size() && row.size() > 2; i++) {
            double off = offItsNeighbours(row, own, i);
            if (off > farthest) {
                farthest = off;
                worst = i;
            }
        }
        return worst;
    }

    /** 0 where the neighbours do not agree. At the ends the next two are the neighbours. */
    private double offItsNeighbours(List<Station> row, List<Covariance> own, int i) {
        int one = i == 0 ? 1 : i - 1;
        int other = i == 0 ? 2 : i == row.size() - 1 ? i - 2 : i + 1;
        Station a = row.get(one);
        Station b = row.get(other);
        Covariance both = own.get(one).plus(own.get(other));
        if (Significance.of(a.mean().u() - b.mean().u(), a.mean().v() - b.mean().v(), both) > threshold) {
            return 0;
        }
        double share = shareOfOther(row.get(i), a, b);
        UvPrime here = row.get(i).mean();
        double du = here.u() - (1 - share) * a.mean().u() - share * b.mean().u();
        double dv = here.v() - (1 - share) * a.mean().v() - share * b.mean().v();
        CovarianceSum expected = new CovarianceSum();
        expected.add(own.get(one), (1 - share) * (1 - share));
        expected.add(own.get(other), share * share);
        expected.add(own.get(i), 1);
        return Significance.of(du, dv, expected.times(1));
    }

    /** How far a station lies from one neighbour towards the other: a steady drift runs on through it. */
    private static double shareOfOther(Station here, Station one, Station other) {
        return (here.positionM() - one.positionM()) / (other.positionM() - one.positionM());
    }
}
