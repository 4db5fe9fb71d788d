package covewalk.verdict.plan;

import covewalk.survey.Joint;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What the plan does for a joint.
 *
 * @param settlesSteps how far from the limit a true difference has to lie to be settled in nine cases of ten, steps;
 *     empty where a side cannot be read, or the joint is settled already
 */
public record PlannedJoint(Joint joint, Outlook outlook, OptionalDouble settlesSteps) {

    /** What may be hoped for. */
    public enum Outlook {
        /** A difference one step off the limit is settled. */
        SETTLES,
        /** The meter, the scatter along the reel or its length does not allow it; only larger differences are. */
        TOO_COARSE,
        /** The two reels may have unlike spectra, on which the meter may err by more than can be read away. */
        UNLIKE_REELS,
        /** A side is so short that every station lies where the meter mixes both reels. */
        TOO_SHORT,
        /** The readings there are settle it already. */
        SETTLED;

        /** The word in files. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
