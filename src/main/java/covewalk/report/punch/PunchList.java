package covewalk.report.punch;

import covewalk.survey.Problem;
import covewalk.survey.Reel;
import covewalk.survey.ReelsById;
import covewalk.survey.file.punch.PunchChange;
import covewalk.survey.file.punch.PunchState;
import covewalk.survey.file.punch.PunchStates;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Judgement;
import covewalk.verdict.Settle;
import covewalk.verdict.limit.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What there is to do, one item per fault (but one per cove for many that only a better meter settles), in walking
 * order: cove by cove, from the datum on.
 *
 * @param judgement what it was made from
 * @param items those found now; a fault that has a number keeps it, a new one has the next that nobody ever had
 * @param gone items that have a number and are not found any more, by number
 * @param recorded how the survey's own log has them
 * @param before the visit that this one follows; empty where it follows none, or none that can be read
 */
public record PunchList(Judgement judgement, List<PunchItem> items, List<GoneItem> gone, PunchStates recorded,
                        Optional<EarlierVisit> before) {

    /** More placements than this that only a better meter could settle are one item, so that they hide no other. */
    private static final int MOST_ALIKE = 3;

    public PunchList {
        items = List.copyOf(items);
        gone = List.copyOf(gone);
    }

    /** A first list, its items numbered from 1 in walking order. */
    public static PunchList of(Judgement judgement) {
        return of(judgement, PunchStates.NONE, Optional.empty());
    }

    /**
     * A list that goes on with the numbers given before.
     *
     * @param recorded how the items stand by the survey's own log
     * @param before the visit that this one follows, whose items keep their numbers; what the own log says goes first
     */
    public static PunchList of(Judgement judgement, PunchStates recorded, Optional<EarlierVisit> before) {
        PunchStates known = recorded.over(before.map(EarlierVisit::states).orElse(PunchStates.NONE));
        List<PunchItem> items = new ItemNumbers(known).of(found(judgement));
        return new PunchList(judgement, items, GoneItem.of(known, items, judgement), recorded, before);
    }

    /** The rows that the survey's log lacks so that every number given here stays with its fault. */
    public List<PunchChange> registrations() {
        return Stream.concat(items.stream().map(PunchItem::state), gone.stream().map(GoneItem::state))
                .filter(state -> recorded.item(state.item()).isEmpty()).sorted(Comparator.comparingInt(PunchState::item))
                .map(PunchState::asChange).toList();
    }

    /** What was found at an item's place on the visit before; empty where it was not looked at then. */
    public Optional<PlaceThen> before(PunchItem item) {
        return before.flatMap(visit -> PlaceThen.in(visit.judgement(), item.place()));
    }

    /** What is found now at the place of an item that is gone; empty where its reels do not meet there any more. */
    public Optional<PlaceThen> now(GoneItem item) {
        return item.state().place().flatMap(place -> PlaceThen.in(judgement, place));
    }

    /** What to know of numbers that are not in the survey's log: they hold for this time only. */
    public List<Problem> notFixed() {
        List<String> open = items.stream().map(PunchItem::number).filter(number -> !isFixed(number)).map(String::valueOf).toList();
        return open.isEmpty() ? List.of() : List.of(Problem.warning("punch.not-fixed", String.join(", ", open)));
    }

    /** The same list once its registrations are in the survey's log. */
    public PunchList registered(PunchStates now) {
        return new PunchList(judgement, items, gone, now, before);
    }

    /** All numbers that were ever given, those of this list among them, from the lowest up. */
    public List<Integer> numbers() {
        return Stream.concat(items.stream().map(PunchItem::number), gone.stream().map(item -> item.state().item())).sorted().toList();
    }

    /** The same list with these items alone. */
    public PunchList only(List<Integer> numbers) {
        return new PunchList(judgement, items.stream().filter(item -> numbers.contains(item.number())).toList(),
                gone.stream().filter(item -> numbers.contains(item.state().item())).toList(), recorded, before);
    }

    /** Whether the number of an item is in the survey's log; else the next report may give it another. */
    public boolean isFixed(int number) {
        return recorded.item(number).isPresent();
    }

    /** What is found, in walking order, not yet numbered. */
    private static List<PunchItem> found(Judgement judgement) {
        ReelsById reels = new ReelsById(judgement.survey());
        List<PunchItem> items = new ArrayList<>();
        for (CoveJudgement cove : judgement.coves()) {
            List<Fault> alike = openForTheMeter(cove);
            List<Fault> told = cove.faults().stream().sorted(Comparator.comparingDouble(Fault::positionM))
                    .filter(fault -> !without(alike, farthest(alike)).contains(fault)).toList();
            told.forEach(fault -> items.add(new PunchItem(cove.cove(), fault, reels(reels, fault),
                    fault == farthest(alike) ? without(alike, fault) : List.of(), PunchState.open(1))));
        }
        return items;
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
