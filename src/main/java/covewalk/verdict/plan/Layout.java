package covewalk.verdict.plan;

import covewalk.survey.Placement;
import covewalk.survey.SetUp;
import covewalk.verdict.stretch.Ending;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The stations of one placement: evenly along it, clear of its ends, its ends read at least twice; and as many more near
 * both ends as it takes to know the colour there, whatever faint drift there is along it.
 */
record Layout(Placement placement, List<Double> positions, int atEnds, int between) {

    /** Stations lie this far apart at most, m (common practice, no source). */
    private static final double WIDEST_M = 1;

    /** Shorter than this is read at one station, m (common practice, no source). */
    private static final double SHORTEST_M = 0.25;

    /** Stations near an end lie this far apart, m: each covers other diodes (common practice, no source). */
    private static final double NEAR_AN_END_M = 0.1;

    /** More of them at one end are not worth a walk (common practice, no source). */
    private static final int MOST_NEAR_AN_END = 10;

    /** From the end of a placement, m, where the meter averages over less (common practice, no source). */
    private static final double FROM_THE_END_M = 0.2;

    /** More than just beyond twice the smear, m: nobody holds a meter to the millimetre. */
    private static final double CLEAR_M = 0.05;

    /** Readings at one place, lifting the meter in between (common practice, no source: two or three at the ends). */
    private static final int MOST_REPEATS = 3;
    private static final int REPEATS_AT_ENDS = 2;

    Layout {
        positions = List.copyOf(positions);
    }

    /** From the fewest readings to the most that are worth a walk; empty where no place is clear of both ends. */
    static List<Layout> of(Placement placement, SetUp setUp) {
        double clear = Math.max(FROM_THE_END_M, 2 * setUp.smearM() + CLEAR_M);
        if (placement.lengthM() / 2 < clear) {
            clear = 2 * setUp.smearM() + CLEAR_M / 2;
        }
        double from = placement.fromM() + clear;
        double usable = placement.lengthM() - 2 * clear;
        if (usable < 0) {
            return List.of();
        }
        List<Layout> layouts = new ArrayList<>();
        List<Double> evenly = evenly(from, usable, usable < SHORTEST_M ? 1 : (int) Math.ceil(usable / WIDEST_M) + 1);
        int most = (int) Math.min(MOST_NEAR_AN_END, Math.floor(usable / 2 / NEAR_AN_END_M - 0.5));
        for (int more = 0; more <= Math.max(0, most); more++) {
            layouts.add(new Layout(placement, withMoreAtEnds(evenly, more), REPEATS_AT_ENDS, 1));
        }
        for (int repeats = REPEATS_AT_ENDS; repeats <= MOST_REPEATS; repeats++) {
            layouts.add(new Layout(placement, withMoreAtEnds(evenly, Math.max(0, most)), repeats, repeats));
        }
        return layouts;
    }

    private static List<Double> withMoreAtEnds(List<Double> evenly, int more) {
        TreeSet<Double> positions = new TreeSet<>(evenly);
        for (int i = 1; i <= more; i++) {
            positions.add(centimetres(evenly.get(0) + i * NEAR_AN_END_M));
            positions.add(centimetres(evenly.get(evenly.size() - 1) - i * NEAR_AN_END_M));
        }
        return List.copyOf(positions);
    }

    private static double centimetres(double positionM) {
        return Math.rint(positionM * 100) / 100;
    }

    private static List<Double> evenly(double from, double usable, int n) {
        List<Double> positions = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double at = n == 1 ? from + usable / 2 : from + usable * i / (n - 1);
            positions.add(centimetres(at));
        }
        return positions;
    }

    int readingsAt(int i) {
        return i == 0 || i == positions.size() - 1 ? atEnds : between;
    }

    /** Variance of the colour found at either end, the less well known one, in u' and v' each. */
    double variance(ExpectedNoise noise) {
        double information = 0;
        double moment = 0;
        double spread = 0;
        for (int i = 0; i < positions.size(); i++) {
            double weight = 1 / noise.ofStation(readingsAt(i));
            information += weight;
            moment += weight * positions.get(i);
            spread += weight * positions.get(i) * positions.get(i);
        }
        double centre = moment / information;
        spread -= information * centre * centre;
        double far = Math.max(centre - placement.fromM(), placement.toM() - centre);
        return 1 / information + (positions.size() > 1 ? Ending.USUAL_SHARE * far * far / spread : 0);
    }
}
