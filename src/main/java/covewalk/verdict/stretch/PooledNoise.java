package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.distribution.FDistribution;

/**
 * The scatter of the stations about their stretches, in excess of repeatability and digits, pooled over all stretches
 * of a set-up (GUM H.5 pools alike) but for those that scatter significantly more than the rest, which stand alone.
 */
final class PooledNoise {

    /** Degrees of freedom under which an estimate says too little to be used. */
    private static final int FEWEST = 2;

    /** The share of equal stretches that stand alone by chance. */
    private static final double STANDS_ALONE = 0.001;

    private final Repeatability repeatability;
    private final Set<Stretch> alone = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Residuals pool;

    PooledNoise(List<Stretch> stretches, Repeatability repeatability) {
        this.repeatability = repeatability;
        List<Residuals> each = stretches.parallelStream().map(Residuals::of).toList();
        Residuals all = each.stream().reduce(Residuals.NONE, Residuals::plus);
        List<Boolean> stands = each.parallelStream().map(own -> scattersMore(own, all)).toList();
        Residuals alike = Residuals.NONE;
        for (int i = 0; i < stretches.size(); i++) {
            if (stands.get(i)) {
                alone.add(stretches.get(i));
            } else {
                alike = alike.plus(each.get(i));
            }
        }
        this.pool = alike;
    }

    /** The noise that holds for one of the stretches: its own where it stands alone, else the pool's. */
    Noise of(Stretch stretch) {
        Residuals used = alone.contains(stretch) ? Residuals.of(stretch) : pool;
        if (used.degrees() < FEWEST) {
            return new Noise(repeatability, Covariance.ZERO, repeatability.found());
        }
        return new Noise(repeatability, Excess.over(used.covariance(), used.expected(repeatability)),
                new Noise.Found(used.covariance(), used.shares() / used.stations(), used.degrees()));
    }

    private static boolean scattersMore(Residuals own, Residuals all) {
        double others = all.degrees() - own.degrees();
        double sumOfOthers = all.sum() - own.sum();
        if (own.degrees() < FEWEST || others < FEWEST || !(sumOfOthers > 0)) {
            return false;
        }
        double ratio = own.sum() / own.degrees() / (sumOfOthers / others);
        FDistribution chance = new FDistribution(null, 2 * own.degrees(), 2 * others);
        return chance.cumulativeProbability(ratio) > 1 - STANDS_ALONE;
    }
}
