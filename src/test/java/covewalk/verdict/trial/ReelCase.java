package covewalk.verdict.trial;

import covewalk.verdict.CoveJudgement;
import covewalk.verdict.stretch.Stretch;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Reels whose course of colour is known: what is seen inside them.
 *
 * @param truth what lies there
 * @param walk sets the noise, lays the reels and reads them
 */
record ReelCase(String name, Seen truth, Consumer<TrueCove> walk) {

    /** What a cove shows inside its reels. */
    enum Seen { NOTHING, ONE_CHANGE, DRIFT, LONE_STATION, SEVERAL }

    @Override
    public String toString() {
        return name;
    }

    CoveJudgement judged(int seed) {
        TrueCove cove = new TrueCove(31L * seed + name.hashCode());
        walk.accept(cove.begin());
        return cove.judged();
    }

    /** Of so many coves, which share shows what. */
    Map<Seen, Double> shares(int trials) {
        Map<Seen, Double> shares = new EnumMap<>(Seen.class);
        for (Seen seen : Seen.values()) {
            shares.put(seen, 0.0);
        }
        for (int seed = 0; seed < trials; seed++) {
            shares.merge(seen(judged(seed)), 1.0 / trials, Double::sum);
        }
        return shares;
    }

    /** The share that shows anything at all. */
    double anything(int trials) {
        return Math.max(0, 1 - shares(trials).get(Seen.NOTHING));
    }

    static Seen seen(CoveJudgement cove) {
        long changes = cove.stretches().size() - cove.cove().placements().size();
        long drifts = cove.stretches().stream().filter(stretch -> stretch.line().drifts()).count();
        long lone = cove.stretches().stream().map(Stretch::aside).mapToLong(List::size).sum();
        if (changes + drifts + lone > 1) {
            return Seen.SEVERAL;
        }
        return changes == 1 ? Seen.ONE_CHANGE : drifts == 1 ? Seen.DRIFT : lone == 1 ? Seen.LONE_STATION : Seen.NOTHING;
    }
}
