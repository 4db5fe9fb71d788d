package covewalk.report;

import covewalk.survey.Reel;
import covewalk.survey.ReelsById;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Judgement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What there is to do, one item per fault, in walking order: cove by cove, from the datum on.
 *
 * @param judgement what it was made from
 * @param items numbered from 1
 */
public record PunchList(Judgement judgement, List<PunchItem> items) {

    public PunchList {
        items = List.copyOf(items);
    }

    public static PunchList of(Judgement judgement) {
        List<PunchItem> items = new ArrayList<>();
        ReelsById reels = new ReelsById(judgement.survey());
        for (CoveJudgement cove : judgement.coves()) {
            cove.faults().stream().sorted(Comparator.comparingDouble(Fault::positionM)).forEach(fault -> items.add(
                    new PunchItem(items.size() + 1, cove.cove(), fault, reels(reels, fault))));
        }
        return new PunchList(judgement, items);
    }

    /**
     * The items farthest beyond their limit, farthest first; what is only unsettled follows what is beyond, and single
     * spots, which may be misreads, follow everything.
     */
    public List<PunchItem> worst(int most) {
        return items.stream().sorted(Comparator.comparing((PunchItem item) -> item.fault().kind() == FaultKind.LONE_STATION)
                .thenComparing(item -> item.fault().verdict())
                .thenComparing(Comparator.comparingDouble(PunchList::timesTheLimit).reversed())).limit(most).toList();
    }

    private static double timesTheLimit(PunchItem item) {
        return item.fault().difference().steps() / item.fault().limitSteps();
    }

    private static List<Reel> reels(ReelsById reels, Fault fault) {
        return fault.reels().stream().map(id -> reels.find(id).orElseGet(() -> unlabelled(id))).toList();
    }

    private static Reel unlabelled(String id) {
        return new Reel(id, "", "", "", OptionalInt.empty(), "", "", "", "", "", OptionalDouble.empty(),
                OptionalDouble.empty(), Optional.empty());
    }
}
