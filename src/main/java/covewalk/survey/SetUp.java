package covewalk.survey;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * One meter, one way of reading, one dim level. Only readings of one set-up are compared.
 *
 * @param repeatabilityUv standard uncertainty (k = 1) of u' and of v' each when a reading is repeated
 * @param absoluteUv standard uncertainty (k = 1) of u' and of v' each against the true colour
 * @param unlikeUv added standard uncertainty of u' and of v' each where two reels' spectra may be unlike
 * @param smearM path over which one reading averages, m: head to strip, strip to paint, or both light paths added
 * @param dimPercent level the light was set to, percent of full
 * @param leastLux less light than this, lx, the meter does not read well; empty where nobody said
 * @param assumed which of {@link #UNCERTAINTIES} nobody declared: their figures are assumed, and printed so
 */
public record SetUp(String id, String meter, String serial, Optional<LocalDate> calibrationDue, double repeatabilityUv,
                    double absoluteUv, double unlikeUv, Reads reads, double smearM, double dimPercent,
                    OptionalDouble leastLux, Set<String> assumed) {

    /** The names of the three uncertainties in a survey file. */
    public static final List<String> UNCERTAINTIES = List.of("repeatabilityUv", "absoluteUv", "unlikeUv");

    /** What is assumed of a meter nobody described (common practice, no source): printed as assumed. */
    public static final SetUp ASSUMED = new SetUp("A", "", "", Optional.empty(), 0.0005, 0.0015, 0.0005, Reads.STRIP, 0,
            100, Set.copyOf(UNCERTAINTIES));

    public SetUp {
        assumed = Collections.unmodifiableSet(new TreeSet<>(assumed));
        if (!(repeatabilityUv > 0 && repeatabilityUv < 1)) { // written so that NaN is refused too
            throw new IllegalArgumentException("a repeatability of " + repeatabilityUv + ": it lies above 0, below 1, in u' and v'");
        }
        if (!(absoluteUv >= 0 && absoluteUv < 1 && unlikeUv >= 0 && unlikeUv < 1)) {
            throw new IllegalArgumentException("uncertainties of " + absoluteUv + " and " + unlikeUv + ": both lie from 0 up to below 1");
        }
        if (!UNCERTAINTIES.containsAll(assumed)) {
            throw new IllegalArgumentException(assumed + " names something other than " + UNCERTAINTIES);
        }
    }

    /** A set-up of which nobody said how much light its meter needs. */
    public SetUp(String id, String meter, String serial, Optional<LocalDate> calibrationDue, double repeatabilityUv,
                 double absoluteUv, double unlikeUv, Reads reads, double smearM, double dimPercent, Set<String> assumed) {
        this(id, meter, serial, calibrationDue, repeatabilityUv, absoluteUv, unlikeUv, reads, smearM, dimPercent,
                OptionalDouble.empty(), assumed);
    }

    /** Whether all three uncertainties were declared. */
    public boolean declared() {
        return assumed.isEmpty();
    }
}
