package covewalk.verdict;

import covewalk.survey.Cove;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import java.util.List;

/**
 * The verdicts of one cove.
 *
 * @param stations along the cove from its datum, of all set-ups
 * @param stretches along the cove
 * @param joints every joint, whatever its verdict; the closing one last
 * @param faults what is beyond or unsettled, along the cove
 */
public record CoveJudgement(Cove cove, List<Station> stations, List<Stretch> stretches, List<JudgedJoint> joints,
                            List<Fault> faults) {

    public CoveJudgement {
        stations = List.copyOf(stations);
        stretches = List.copyOf(stretches);
        joints = List.copyOf(joints);
        faults = List.copyOf(faults);
    }

    /** How many readings were judged. */
    public int readings() {
        return stations.stream().mapToInt(station -> station.readings().size()).sum();
    }

    /** Joints with this verdict, and faults with it that are no joint. */
    public long count(Verdict verdict) {
        return joints.stream().filter(joint -> joint.verdict() == verdict).count()
                + faults.stream().filter(fault -> fault.kind() != FaultKind.JOINT && fault.verdict() == verdict).count();
    }
}
