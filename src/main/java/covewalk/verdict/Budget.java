package covewalk.verdict;

import java.util.List;

/**
 * Of what the uncertainty of a difference is made up, along that difference.
 *
 * @param entries each part once; their squares add to the square of the whole
 * @param degrees of freedom of the whole; infinite where nothing was estimated from the readings
 */
public record Budget(List<Entry> entries, double degrees) {

    /** Nothing was measured. */
    public static final Budget NONE = new Budget(List.of(), Double.POSITIVE_INFINITY);

    public Budget {
        entries = List.copyOf(entries);
    }

    /** Standard uncertainty of all parts together, steps. */
    public double wholeSteps() {
        return Math.sqrt(entries.stream().mapToDouble(entry -> entry.steps() * entry.steps()).sum());
    }

    /** What varies. */
    public enum Part {
        /** Reading again at one place. */
        REPEATABILITY,
        /** From place to place along one stretch, beyond the repeatability. */
        SCATTER,
        /** How steeply the side may drift, however faintly, carried on from the middle of its readings. */
        SLOPE,
        /** The digits typed, where they average out over the readings. */
        DIGITS,
        /** The digits typed, where they are too coarse to average out. */
        COARSE_DIGITS,
        /** The meter on spectra that may be unlike. */
        UNLIKE_REELS,
        /** The meter against the true colour. */
        METER,
        /** The correction of a drift of meter or light, linear in time. */
        DRIFT_CORRECTION
    }

    /** Where a figure comes from. */
    public enum Source { DECLARED, ASSUMED, MEASURED, TYPED }

    /** Which side of the difference it belongs to. */
    public enum Of { DATUM_SIDE, FAR_SIDE, BOTH }

    /**
     * One part.
     *
     * @param steps standard uncertainty that it adds to the difference, steps
     * @param readings how many readings of that side it rests on; 0 where that does not matter
     */
    public record Entry(Part part, Of of, Source source, double steps, int readings) {
    }
}
