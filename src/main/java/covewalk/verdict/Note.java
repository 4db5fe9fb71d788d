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
        ASSUMED_METER,
        /** A side has one reading: the verdict rests on the declared repeatability. No details. */
        RESTS_ON_DECLARED,
        /** The two reels may have unlike spectra: the meter may err differently on each. No details. */
        UNLIKE_REELS,
        /** Rounding of the digits typed is coarser than the noise. Detail: its size in steps. */
        COARSE_DIGITS,
        /** Stations were left out, nearer to the joint than the meter averages over. Detail: how many. */
        LEFT_OUT_NEAR_JOINT,
        /** The target is far from the standard colour whose ellipse counts steps. Details: cove, colour, its CCT. */
        FAR_STANDARD_COLOUR,
        /** The reels' lux differ by more than a tenth across the place. Detail: the ratio. */
        BRIGHTNESS_STEP,

        // What weakens the evidence, and what of it was corrected. Steps are circles of 0.0011 in u'v' in these.

        /** A reference spot drifts. Details: set-up, cove, position in m, steps, minutes, direction. */
        REFERENCE_DRIFT,
        /** The same, where times are missing. Details: set-up, cove, position in m, steps, direction. */
        REFERENCE_DRIFT_BY_ORDER,
        /** No reference spot was read often enough, or none at the end: drift cannot be seen. Detail: set-up. */
        DRIFT_NOT_SEEN,
        /** Readings were corrected. Details: set-up, readings, steps, minutes, uncertainty in steps, readings not corrected. */
        DRIFT_CORRECTED,
        /** A correction was asked for, and there was nothing to go by or nothing to correct. Detail: set-up. */
        DRIFT_NOT_CORRECTED,
        /** Light left with the cove off was subtracted. Details: set-up, readings, largest share in percent. */
        DARK_SUBTRACTED,
        /** So much light was left that nothing was subtracted. Details: set-up, readings. */
        DARK_SWAMPS,
        /** Lux is missing, so that dark readings say nothing. Details: set-up, readings. */
        DARK_WITHOUT_LUX,
        /** Readings with less light than the meter needs. Details: set-up, readings, lux. */
        BELOW_RANGE,
        /** Nobody noted how long the light had been on. No details. */
        WARM_UP_UNKNOWN,
        /** A cove was read with more than one set-up. Detail: cove. */
        SEVERAL_SETUPS,
        /** Repeats scatter more than was declared. Details: set-up, measured and declared in steps. */
        NOISIER_THAN_DECLARED,
        /** Repeats scatter less than was declared. Details: set-up, measured and declared in steps. */
        QUIETER_THAN_DECLARED;

        /** Whether it tells of a correction to the colours that were judged. */
        public boolean corrects() {
            return this == DRIFT_CORRECTED || this == DARK_SUBTRACTED;
        }
    }
}
