package covewalk.report.punch;

import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.Reel;
import covewalk.survey.file.punch.PunchPlace;
import covewalk.survey.file.punch.PunchState;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Hint;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.plan.Access;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One line of the punch list: a fault, and what one needs to know to go there.
 *
 * @param reels what lies there, the datum's side first: two at a joint, else the one it is in
 * @param alike further faults that this item stands for, along the cove; the one shown is the farthest off
 * @param state its number, which the fault keeps for good, and how far it has come
 */
public record PunchItem(Cove cove, Fault fault, List<Reel> reels, List<Fault> alike, PunchState state) {

    /** A feed farther than the nearest by no more than this may feed the place as well (common practice, no source). */
    private static final double MUCH_FARTHER_M = 1;

    /** A fault found again this near to where it was is the same one (common practice, no source). */
    public static final double SAME_PLACE_M = 0.6;

    /** Above this height, in m, one cannot read from the floor (common practice, no source). */
    public static final double FROM_THE_FLOOR_M = Access.FROM_THE_FLOOR_M;

    public PunchItem {
        reels = List.copyOf(reels);
        alike = List.copyOf(alike);
    }

    /** From 1; a fault keeps its number, and no other gets it. */
    public int number() {
        return state.item();
    }

    PunchItem as(PunchState other) {
        return new PunchItem(cove, fault, reels, alike, other);
    }

    /** Which fault its number stands for from now on. */
    PunchPlace place() {
        return place(fault);
    }

    private PunchPlace place(Fault at) {
        return PunchPlace.of(cove.id(), at.kind().code(), at.positionM(), at.reels());
    }

    /** How far a registered fault lies from this item, m; empty where it is another fault. */
    OptionalDouble metresFrom(PunchPlace registered) {
        return Stream.concat(Stream.of(fault), alike.stream()).filter(each -> place(each).isLike(registered))
                .filter(each -> registered.positionM() >= each.fromM() - SAME_PLACE_M && registered.positionM() <= each.toM() + SAME_PLACE_M)
                .mapToDouble(each -> Math.abs(each.positionM() - registered.positionM())).min();
    }

    /** Where the first of the faults it stands for begins, m from the datum. */
    public double fromM() {
        return alike.stream().mapToDouble(Fault::fromM).reduce(fault.fromM(), Math::min);
    }

    /** Where the last of them ends, m. */
    public double toM() {
        return alike.stream().mapToDouble(Fault::toM).reduce(fault.toM(), Math::max);
    }

    public Priority priority() {
        return Priority.of(fault);
    }

    /** Whether a ladder or platform is needed, as far as is known: an unknown height may be any. */
    public boolean atHeight() {
        return cove.heightM().isEmpty() || cove.heightM().getAsDouble() > FROM_THE_FLOOR_M;
    }

    /** Whether somebody is going to touch strip, wiring or power; only reading again touches none. */
    public boolean touchesWiring() {
        return fault.verdict() == Verdict.BEYOND || fault.hint() == Hint.VOLTAGE_DROP
                || fault.kind() == FaultKind.LONE_STATION;
    }

    /**
     * The feeds that may feed this place: the nearest along the cove, round the end of a closed one too, and those not
     * much farther, since the two sides of a joint may be on different circuits. Nearest first; empty where none is noted.
     */
    public List<Feed> feeds() {
        double nearest = cove.feeds().stream().mapToDouble(this::distanceTo).min().orElse(0);
        return cove.feeds().stream().filter(feed -> distanceTo(feed) <= nearest + MUCH_FARTHER_M)
                .sorted(Comparator.comparingDouble(this::distanceTo).thenComparingDouble(Feed::atM)).toList();
    }

    private double distanceTo(Feed feed) {
        double along = Math.abs(feed.atM() - fault.positionM());
        return cove.closed() ? Math.min(along, Math.abs(cove.lengthM() - along)) : along;
    }

    /** The reel on the datum's side, or the one it is in; empty where it is not described. */
    public Optional<Reel> before() {
        return reels.stream().findFirst();
    }

    /** The reel on the far side of a joint. */
    public Optional<Reel> after() {
        return reels.stream().skip(1).findFirst();
    }
}
