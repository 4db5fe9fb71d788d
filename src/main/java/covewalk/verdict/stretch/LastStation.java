package covewalk.verdict.stretch;

import java.util.List;
import java.util.Optional;

/**
 * The station of a level stretch next to one of its ends, where it lies off the rest. From one station nobody can tell a
 * strip that changes its colour there from a slip of the meter, so it moves no verdict; but at a joint it is the colour
 * there that counts.
 *
 * @param du in u', from the rest to the station
 * @param dv in v'
 */
public record LastStation(Station station, double du, double dv) {

    /** Chance alone shows one in this share of flat ends, or up to twice it (by simulation); common practice, no source. */
    private static final double BY_CHANCE = 0.01;

    /** From fewer nobody knows what the rest is. */
    private static final int FEWEST_OTHERS = 3;

    /**
     * @param positionM of the end
     * @return empty where the stretch drifts, where it has few stations, or where chance explains it
     */
    public static Optional<LastStation> off(Stretch stretch, double positionM) {
        List<Station> stations = stretch.stations();
        int others = stations.size() - 1;
        if (others < FEWEST_OTHERS || stretch.line().drifts()) {
            return Optional.empty();
        }
        boolean far = positionM > stretch.middleM();
        Station last = stations.get(far ? others : 0);
        Line rest = new LineFit(far ? stations.subList(0, others) : stations.subList(1, others + 1), stretch.noise()).level();
        double du = last.mean().u() - rest.centre().u();
        double dv = last.mean().v() - rest.centre().v();
        double off = Significance.of(du, dv, stretch.noise().of(last).sum().plus(rest.centreParts().sum()));
        return exceedsChance(off, stretch.noise().degrees()) ? Optional.of(new LastStation(last, du, dv)) : Optional.empty();
    }

    /** The noise was estimated with the station itself among others: what it adds to its own noise is taken off again. */
    private static boolean exceedsChance(double off, double degrees) {
        if (Double.isInfinite(degrees)) {
            return off > Significance.exceededIn(BY_CHANCE, degrees);
        }
        double left = degrees - off; // as a covariance with one of its squares taken out (Sherman and Morrison)
        return degrees > 2 && (left <= 0 || off * (degrees - 1) / left > Significance.exceededIn(BY_CHANCE, degrees - 1));
    }
}
