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

    /** The feed nearest along the cove, the datum's side where two are as near; empty where none is noted. */
    public Optional<Feed> nearestFeed() {
        return cove.feeds().stream().sorted(Comparator.comparingDouble(Feed::atM))
                .min(Comparator.comparingDouble(feed -> Math.abs(feed.atM() - fault.positionM())));
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
