package covewalk.report.punch;

import covewalk.survey.Placement;
import covewalk.survey.file.punch.PunchPlace;
import covewalk.survey.file.punch.PunchState;
import covewalk.survey.file.punch.PunchStates;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.FaultKind;
import covewalk.verdict.JudgedJoint;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * An item that was given a number and is not found any more as an item of its own. Its number stays with it.
 *
 * @param partOf the item that stands for its place too now; empty where nothing is found there
 * @param read whether its place was read now: where it was not, nobody knows whether it is still there
 */
public record GoneItem(PunchState state, OptionalInt partOf, boolean read) {

    static List<GoneItem> of(PunchStates known, List<PunchItem> items, Judgement judgement) {
        Set<Integer> found = items.stream().map(PunchItem::number).collect(Collectors.toSet());
        return known.all().stream().filter(state -> !found.contains(state.item()))
                .map(state -> new GoneItem(state, partOf(state, items), state.place().map(place -> isRead(place, judgement)).orElse(true))).toList();
    }

    private static boolean isRead(PunchPlace place, Judgement judgement) {
        Optional<CoveJudgement> there = judgement.coves().stream().filter(cove -> cove.cove().id().equals(place.cove())).findFirst();
        if (there.isEmpty()) {
            return false;
        }
        List<JudgedJoint> joints = there.get().joints().stream()
                .filter(joint -> place.kind().equals(FaultKind.JOINT.code()) && PlaceThen.isNear(joint.positionM(), place)).toList();
        if (!joints.isEmpty()) {
            return joints.stream().anyMatch(joint -> joint.verdict() != Verdict.NOT_READ);
        }
        Optional<Placement> reel = there.get().cove().placementAt(place.positionM());
        return there.get().stations().stream()
                .anyMatch(station -> reel.map(length -> length.covers(station.positionM())).orElse(true));
    }

    private static OptionalInt partOf(PunchState state, List<PunchItem> items) {
        Optional<PunchItem> item = state.place().flatMap(place -> items.stream().filter(each -> !each.alike().isEmpty())
                .filter(each -> each.metresFrom(place).isPresent()).findFirst());
        return item.map(each -> OptionalInt.of(each.number())).orElse(OptionalInt.empty());
    }
}
