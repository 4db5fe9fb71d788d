package covewalk.report;

import covewalk.survey.Reel;
import covewalk.survey.ReelsById;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Judgement;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Settle;
import covewalk.verdict.limit.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What there is to do, one item per fault (but one per cove for many that only a better meter settles), in walking order: cove by cove, from the datum on.
 *
 * @param judgement what it was made from
 * @param items numbered from 1
 */
public record PunchList(Judgement judgement, List<PunchItem> items) {

    /** More placements than this that only a better meter could settle are one item, so that they hide no other. */
    private static final int MOST_ALIKE = 3;

    public PunchList {
        items = List.copyOf(items);
    }

    public static PunchList of(Judgement judgement) {
        ReelsById reels = new ReelsById(judgement.survey());
        List<PunchItem> items = new ArrayList<>();
        for (CoveJudgement cove : judgement.coves()) {
            List<Fault> alike = openForTheMeter(cove);
            List<Fault> told = cove.faults().stream().sorted(Comparator.comparingDouble(Fault::positionM))
                    .filter(fault -> !without(alike, farthest(alike)).contains(fault)).toList();
            told.forEach(fault -> items.add(new PunchItem(items.size() + 1, cove.cove(), fault, reels(reels, fault),
                    fault == farthest(alike) ? without(alike, fault) : List.of())));
        }
        return new PunchList(judgement, items);
    }

    /** The one that speaks for the others; null where there are none. */
    private static Fault farthest(List<Fault> alike) {
        return alike.stream().max(Comparator.comparingDouble(fault -> fault.difference().steps())).orElse(null);
    }

    /** Placements that the meter's own error leaves unsettled against the target; none where they are few. */
    private static List<Fault> openForTheMeter(CoveJudgement cove) {
        List<Fault> open = cove.faults().stream().filter(fault -> fault.kind() == FaultKind.OFF_TARGET
                && fault.verdict() == Verdict.UNSETTLED && fault.settle().whyNot() == Settle.WhyNot.METER_ERROR)
                .sorted(Comparator.comparingDouble(Fault::positionM)).toList();
        return open.size() > MOST_ALIKE ? open : List.of();
    }

    private static List<Fault> without(List<Fault> faults, Fault one) {
        return faults.stream().filter(fault -> fault != one).toList();
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
