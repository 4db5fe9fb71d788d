package covewalk.verdict;

import java.util.Arrays;
import java.util.List;

/**
 * Something that bears on the evidence, as a value; the words come later.
 *
 * @param kind which sentence
 * @param details what is put into it
 */
public record Note(Kind kind, List<String> details) {

    public Note {
        details = List.copyOf(details);
    }

    static Note of(Kind kind, Object... details) {
        return new Note(kind, Arrays.stream(details).map(String::valueOf).toList());
    }

    /** What is noted. */
    public enum Kind {
        /** The meter's uncertainties were not declared, and are assumed. No details. */
        ASSUMED_METER(0),
        /** A side has one reading: the verdict rests on the declared repeatability. No details. */
        RESTS_ON_DECLARED(0),
        /** The two reels may have unlike spectra: the meter may err differently on each. No details. */
        UNLIKE_REELS(0),
        /** Rounding of the digits typed is coarser than the noise. Detail: its size in steps. */
        COARSE_DIGITS(0),
        /** Stations were left out, nearer to the joint than the meter averages over. Detail: how many. */
        LEFT_OUT_NEAR_JOINT(0),
        /** The station next to the joint lies off the rest of its reel. Details: reel, position in m, steps. */
        LAST_STATION_OFF(1),
        /** The target is far from the standard colour whose ellipse counts steps. Details: cove, colour, its CCT. */
        FAR_STANDARD_COLOUR(2),
        /** The reels' lux differ by more than a tenth across the place. Detail: the ratio. */
        BRIGHTNESS_STEP(0),

        // What weakens the evidence, and what of it was corrected. Steps are circles of 0.0011 in u'v' in these.

        /** A reference spot drifts. Details: set-up, cove, position in m, steps, minutes, direction. */
        REFERENCE_DRIFT(2),
        /** The same, where times are missing. Details: set-up, cove, position in m, steps, direction. */
        REFERENCE_DRIFT_BY_ORDER(2),
        /** No reference spot was read often enough, or none at the end: drift cannot be seen. Detail: set-up. */
        DRIFT_NOT_SEEN(1),
        /** A drift is there that nobody asked to take off, and that could be. Detail: set-up. */
        DRIFT_CORRECTABLE(1),
        /** Readings were corrected. Details: set-up, readings, steps, minutes, uncertainty in steps, readings not corrected. */
        DRIFT_CORRECTED(1),
        /** A correction was asked for, and there was nothing to go by or nothing to correct. Detail: set-up. */
        DRIFT_NOT_CORRECTED(1),
        /** Light left with the cove off was subtracted. Details: set-up, readings, largest share in percent. */
        DARK_SUBTRACTED(1),
        /** So much light was left that nothing was subtracted. Details: set-up, readings. */
        DARK_SWAMPS(1),
        /** Lux is missing, so that dark readings say nothing. Details: set-up, readings. */
        DARK_WITHOUT_LUX(1),
        /** Readings with less light than the meter needs. Details: set-up, readings, lux. */
        BELOW_RANGE(1),
        /** Nobody noted how long the light had been on. No details. */
        WARM_UP_UNKNOWN(0),
        /** A cove was read with more than one set-up. Detail: cove. */
        SEVERAL_SETUPS(1),
        /** Repeats scatter more than was declared. Details: set-up, measured and declared in steps. */
        NOISIER_THAN_DECLARED(1),
        /** Repeats scatter less than was declared. Details: set-up, measured and declared in steps. */
        QUIETER_THAN_DECLARED(1);

        private final int names;

        Kind(int names) {
            this.names = names;
        }

        /** How many of the details, from the first on, are somebody's names for things, to be left as they are. */
        public int names() {
            return names;
        }

        /** Whether it tells of a correction to the colours that were judged. */
        public boolean corrects() {
            return this == DRIFT_CORRECTED || this == DARK_SUBTRACTED;
        }
    }
}
