package covewalk.verdict.plan;

import covewalk.survey.Cove;
import java.util.Locale;

/** How one gets at a cove. */
public enum Access {
    /** From the floor. */
    FLOOR(300, 300),
    /** From a platform or ladder. */
    HEIGHT(100, 200),
    /** The height is not noted: measure it before choosing access; planned for as if it were high. */
    UNKNOWN(100, 200);

    /** Above this height, in m, one cannot read from the floor (common practice, no source). */
    public static final double FROM_THE_FLOOR_M = 2;

    private final int slowest;
    private final int fastest;

    /** Readings an hour (common practice, no source). */
    Access(int slowest, int fastest) {
        this.slowest = slowest;
        this.fastest = fastest;
    }

    static Access of(Cove cove) {
        if (cove.heightM().isEmpty()) {
            return UNKNOWN;
        }
        return cove.heightM().getAsDouble() > FROM_THE_FLOOR_M ? HEIGHT : FLOOR;
    }

    /** Minutes for so many readings, at best. */
    public int leastMinutes(int readings) {
        return minutes(readings, fastest);
    }

    /** Minutes for so many readings, at worst. */
    public int mostMinutes(int readings) {
        return minutes(readings, slowest);
    }

    private static int minutes(int readings, int anHour) {
        return (int) Math.ceil(60.0 * readings / anHour);
    }

    /** The word in files. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
