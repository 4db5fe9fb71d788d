package covewalk.verdict.claim;

import java.util.Locale;

/** Why a claim is neither shown nor not shown. */
public enum WhyOpen {
    /** It is settled. */
    NONE,
    /** The readings would settle it, were it not for the meter's own error against the true colour. */
    METER_ERROR,
    /** The reel lies too near the edge of its claim for these readings. */
    NEAR_THE_EDGE,
    /** Light off a surface was read, whose paint tints it; a claim is about the strip. */
    NOT_DIRECT,
    /** The label names neither a centre nor a nominal CCT of the standard. */
    NO_CENTRE,
    /** The reel was not read. */
    NOT_READ;

    /** The word in files. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
