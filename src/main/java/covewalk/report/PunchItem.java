package covewalk.report;

import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.Reel;
import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Hint;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.plan.Access;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One line of the punch list: a fault, and what one needs to know to go there.
 *
 * @param number from 1, in walking order
 * @param reels what lies there, the datum's side first: two at a joint, else the one it is in
 * @param alike further faults that this item stands for, along the cove; the one shown is the farthest off
 */
public record PunchItem(int number, Cove cove, Fault fault, List<Reel> reels, List<Fault> alike) {

    /** A feed farther than the nearest by no more than this may feed the place as well (common practice, no source). */
    private static final double MUCH_FARTHER_M = 1;


    /** Above this height, in m, one cannot read from the floor (common practice, no source). */
    public static final double FROM_THE_FLOOR_M = Access.FROM_THE_FLOOR_M;

    public PunchItem {
        reels = List.copyOf(reels);
        alike = List.copyOf(alike);
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
