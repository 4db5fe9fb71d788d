package covewalk.verdict;

import java.util.OptionalInt;

/**
 * What it takes to settle a verdict, with nine chances in ten, if the difference is as it seems.
 *
 * @param readings further readings on each side; 0 where it is settled, empty where no sensible number does
 * @param whyNot why not, where {@code readings} is empty
 */
public record Settle(OptionalInt readings, WhyNot whyNot) {

    /** Nothing more to read. */
    public static final Settle SETTLED = new Settle(OptionalInt.of(0), WhyNot.NONE);

    /** More readings a side than anybody takes. */
    public static final int MOST = 50;

    static Settle after(int readings) {
        return new Settle(OptionalInt.of(readings), WhyNot.NONE);
    }

    static Settle never(WhyNot why) {
        return new Settle(OptionalInt.empty(), why);
    }

    /** Why more readings would not settle it. */
    public enum WhyNot {
        /** They would, or it is settled. */
        NONE,
        /** The difference seems to lie too near the limit. */
        NEAR_THE_LIMIT,
        /** The readings vary so much that even the most anybody takes would not tell a difference from the limit: one of them may be a slip. */
        SCATTER,
        /** The digits typed are too coarse, and more of them do not help. */
        COARSE_DIGITS,
        /** The meter's own error against the true colour does not shrink with more readings. */
        METER_ERROR,
        /** The two reels may have unlike spectra, on which the meter may err differently however often it reads. */
        UNLIKE_REELS,
        /** A side was not read at all. */
        NOT_READ,
        /** Both sides were read, but never with one set-up. */
        DIFFERENT_SETUPS
    }
}
