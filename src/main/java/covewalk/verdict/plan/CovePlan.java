package covewalk.verdict.plan;

import covewalk.survey.Cove;
import java.util.List;

/**
 * The walk along one cove.
 *
 * @param stops in the order of reading; none where all is settled
 * @param joints every joint, and what the walk does for it
 */
public record CovePlan(Cove cove, Access access, List<Stop> stops, List<PlannedJoint> joints) {

    public CovePlan {
        stops = List.copyOf(stops);
        joints = List.copyOf(joints);
    }

    /** How many readings that makes. */
    public int readings() {
        return stops.stream().mapToInt(Stop::readings).sum();
    }
}
