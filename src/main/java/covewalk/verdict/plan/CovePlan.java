package covewalk.verdict.plan;

import covewalk.survey.Cove;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The walk along one cove.
 *
 * @param stops in the order of reading; none where all is settled
 * @param joints every joint, and what the walk does for it
 * @param whyNothing empty where there are stops
 */
public record CovePlan(Cove cove, Access access, List<Stop> stops, List<PlannedJoint> joints, Optional<WhyNothing> whyNothing) {

    /** Why there is nothing to read. */
    public enum WhyNothing {
        /** No reel lies in the cove. */
        NO_REELS,
        /** Every joint is settled, or there is none and the cove was read. */
        SETTLED,
        /** A side of each joint that is open, or the only reel, has no place clear of its ends. */
        TOO_SHORT,
        /** All that the plan asks for is read, whatever that left open. */
        READ;

        /** The word in the bundle of sentences. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public CovePlan {
        stops = List.copyOf(stops);
        joints = List.copyOf(joints);
    }

    /** How many readings that makes. */
    public int readings() {
        return stops.stream().mapToInt(Stop::readings).sum();
    }
}
