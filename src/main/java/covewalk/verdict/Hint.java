package covewalk.verdict;

import java.util.Locale;

/**
 * What a pattern along a cove is consistent with (common practice, no source). A suspicion with what to check first,
 * never a finding; {@link HintTable} says which pattern suggests which.
 */
public enum Hint {
    /** Different lot or bin, or the wrong white picked: compare both labels. */
    DIFFERENT_LOT_OR_BIN,
    /** The labels agree where the colours do not: look whether the right reel lies there. */
    LABELS_AGREE,
    /** A factory splice, a cut-in piece, or another paint or diffuser. */
    SPLICE_OR_SURFACE,
    /** Away from the feed and dimmer too: voltage drop. */
    VOLTAGE_DROP,
    /** Gradual and not tied to the feed: heat, ageing or a bin mixed along the reel. */
    HEAT_OR_AGEING,
    /** A single spot: dirt, damage, water, shading, or a misread. */
    DIRT_OR_MISREAD,
    /** A whole placement off target: wrong product, ageing, paint, or the meter's offset. */
    WRONG_PRODUCT_OR_METER,
    /** Nothing known suggests itself. */
    NONE;

    /** The word in the bundle of sentences. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
