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
        BRIGHTNESS_STEP
    }
}
