package covewalk.survey;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The stretch of a cove lit by one reel.
 *
 * @param reel the reel's id
 * @param fromM its datum end, m
 * @param toM its far end, m, beyond {@code fromM}
 * @param installed when it was put up, as far as known ("2026-09")
 */
public record Placement(String reel, double fromM, double toM, KnownFrom knownFrom, String installed) {

    /** From the datum to the far end. */
    public static final Comparator<Placement> ALONG_THE_COVE =
            Comparator.comparingDouble(Placement::fromM).thenComparingDouble(Placement::toM);

    public Placement {
        if (!(fromM >= 0 && toM > fromM && Double.isFinite(toM))) {
            throw new IllegalArgumentException(
                    "reel " + reel + " from " + fromM + " m to " + toM + " m: the end lies beyond the start, both from 0 up");
        }
    }

    public double lengthM() {
        return toM - fromM;
    }

    public boolean covers(double positionM) {
        return positionM >= fromM && positionM <= toM;
    }

    /** How it is known which reel lies there. */
    public enum KnownFrom {
        SEEN, AS_BUILT, ASSUMED;

        /** The word in a survey file. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        public static Optional<KnownFrom> of(String code) {
            return Arrays.stream(values()).filter(known -> known.code().equals(code)).findFirst();
        }
    }
}
