package covewalk.verdict.plan;

import covewalk.survey.Placement;
import covewalk.survey.SetUp;
import java.util.ArrayList;
import java.util.List;

/** The stations of one placement: evenly along it, clear of its ends, its ends read at least twice. */
record Layout(List<Double> positions, int atEnds, int between) {

    /** Stations lie this far apart at most and at least, m (common practice, no source). */
    private static final double WIDEST_M = 1;
    private static final double CLOSEST_M = 0.5;

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
        int fewest = usable < CLOSEST_M / 2 ? 1 : (int) Math.ceil(usable / WIDEST_M) + 1;
        int most = Math.max(fewest, (int) Math.floor(usable / CLOSEST_M) + 1);
        for (int n = fewest; n <= most; n++) {
            layouts.add(new Layout(evenly(from, usable, n), REPEATS_AT_ENDS, 1));
        }
        for (int repeats = REPEATS_AT_ENDS; repeats <= MOST_REPEATS; repeats++) {
            layouts.add(new Layout(evenly(from, usable, most), repeats, repeats));
        }
        return layouts;
    }

    private static List<Double> evenly(double from, double usable, int n) {
        List<Double> positions = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double at = n == 1 ? from + usable / 2 : from + usable * i / (n - 1);
            positions.add(Math.rint(at * 100) / 100);
        }
        return positions;
    }

    int readingsAt(int i) {
        return i == 0 || i == positions.size() - 1 ? atEnds : between;
    }

    /** Variance of the colour found, in u' and v' each. */
    double variance(ExpectedNoise noise) {
        double information = 0;
        for (int i = 0; i < positions.size(); i++) {
            information += 1 / noise.ofStation(readingsAt(i));
        }
        return 1 / information;
    }
}
