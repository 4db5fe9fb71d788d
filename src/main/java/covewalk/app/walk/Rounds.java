package covewalk.app.walk;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * Which round a reading belongs to. A pass through a reel ends when something else is read, when one goes back to a station
 * of it that was left, or when the verdicts were looked at. Readings of a later pass count one round more where a joint of
 * the reel had a verdict by then: whoever reads again knows it.
 */
final class Rounds {

    private final Walked walked;
    private final Cove cove;
    private final String setUp;

    Rounds(Walked walked, Cove cove, String setUp) {
        this.walked = walked;
        this.cove = cove;
        this.setUp = setUp;
    }

    /**
     * @param judged the cove's verdicts as they were before this reading; empty before the first
     * @param looked whether verdicts were looked at since the last reading
     */
    int of(double positionM, Optional<CoveJudgement> judged, boolean looked) {
        Optional<Placement> placement = cove.placementAt(positionM);
        List<Reading> there = walked.walk(cove.id(), setUp).filter(reading -> isIn(placement, reading)).toList();
        if (there.isEmpty()) {
            return 1;
        }
        int last = there.stream().mapToInt(Reading::round).max().orElse(1);
        boolean later = looked || !goesOn(there, positionM);
        return later && judged.filter(verdicts -> hasVerdict(verdicts, placement)).isPresent() ? last + 1
                : there.get(there.size() - 1).round();
    }

    /** Whether the last of all walk readings lies in this reel, and this one at its station or at one new to that round. */
    private boolean goesOn(List<Reading> there, double positionM) {
        Optional<Reading> before = walked.last(reading -> reading.role() == Role.WALK && reading.setUp().equals(setUp));
        Reading latest = there.get(there.size() - 1);
        return before.filter(reading -> reading == latest).isPresent() && (latest.positionM().value() == positionM
                || there.stream().noneMatch(reading -> reading.round() == latest.round() && reading.positionM().value() == positionM));
    }

    private boolean isIn(Optional<Placement> placement, Reading reading) {
        return cove.placementAt(reading.positionM().value()).equals(placement);
    }

    private static boolean hasVerdict(CoveJudgement verdicts, Optional<Placement> placement) {
        return verdicts.joints().stream().filter(joint -> joint.verdict() != Verdict.NOT_READ)
                .anyMatch(joint -> placement.filter(here -> joint.joint().before().equals(here) || joint.joint().after().equals(here)).isPresent());
    }
}
