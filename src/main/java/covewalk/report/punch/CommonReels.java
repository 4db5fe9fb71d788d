package covewalk.report.punch;

import covewalk.survey.Reel;
import covewalk.verdict.FaultKind;
import covewalk.verdict.limit.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reels that stand at two joints beyond the limit or more: one reel to look at, not two joints. */
public final class CommonReels {

    private final Map<String, List<PunchItem>> items = new HashMap<>();

    public CommonReels(List<PunchItem> list) {
        list.stream().filter(CommonReels::isJointBeyond).forEach(item -> item.reels().stream().map(Reel::id).distinct()
                .forEach(reel -> items.computeIfAbsent(reel, first -> new ArrayList<>()).add(item)));
    }

    private static boolean isJointBeyond(PunchItem item) {
        return item.fault().kind() == FaultKind.JOINT && item.fault().verdict() == Verdict.BEYOND;
    }

    /** The one of an item's two reels that other items share; empty where neither or both do. */
    public Optional<String> of(PunchItem item) {
        List<String> shared = !isJointBeyond(item) ? List.of()
                : item.reels().stream().map(Reel::id).distinct().filter(reel -> items.get(reel).size() > 1).toList();
        return shared.size() == 1 ? Optional.of(shared.get(0)) : Optional.empty();
    }

    /** The items at which a reel stands, in walking order. */
    List<PunchItem> at(String reel) {
        return items.getOrDefault(reel, List.of());
    }
}
