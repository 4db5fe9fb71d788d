package covewalk.verdict.trial;

import covewalk.verdict.JudgedJoint;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import java.util.function.Consumer;

/**
 * Joints whose truth is known.
 *
 * @param settings of noise, digits, limit
 * @param walk lays the reels and reads them
 */
record JointCase(String name, Consumer<TrueCove> settings, Consumer<TrueCove> walk) {

    /** Two reels of 5 m, evenly read, the second so many steps from the first. */
    static JointCase twoReels(String name, int before, int after, int readings, double steps, double angle,
                              Consumer<TrueCove> settings) {
        return new JointCase(name, settings, cove -> {
            cove.reel(0, 5).reel(5, 10);
            for (int i = 0; i < before; i++) {
                cove.station(place(0, i, before), 0, 0, readings, 1);
            }
            for (int i = 0; i < after; i++) {
                cove.station(place(5, i, after), steps, angle, readings, 1);
            }
        });
    }

    private static double place(double fromM, int i, int stations) {
        return fromM + 0.5 + 4.0 * i / Math.max(1, stations - 1);
    }

    /** The same, with something more happening on the walk. */
    JointCase with(Consumer<TrueCove> more) {
        return new JointCase(name, settings, walk.andThen(more));
    }

    TrueCove cove(int seed) {
        TrueCove cove = new TrueCove(31L * seed + name.hashCode());
        settings.accept(cove);
        walk.accept(cove.begin());
        return cove;
    }

    @Override
    public String toString() {
        return name;
    }

    List<Verdict> trial(int seed) {
        return cove(seed).judged().joints().stream().map(JudgedJoint::verdict).toList();
    }

    /** How many surveys make so many joints, or so nearly. */
    int trials(int joints) {
        return Math.max(1, joints / cove(0).survey().coves().get(0).joints().size());
    }

    /** @param trials surveys, each of its own seed */
    Shares shares(int trials) {
        return Shares.of(trials, this::trial);
    }
}
