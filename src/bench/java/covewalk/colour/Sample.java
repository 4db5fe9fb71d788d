package covewalk.colour;

import java.util.SplittableRandom;

/** The colours that every conversion is timed and measured on: real ones, evenly spread in reciprocal CCT and in Duv. */
final class Sample {

    private static final long SEED = 20261125;

    private Sample() {
    }

    /** {@code n} pairs with reciprocal CCT between those of the two given in kelvin and |Duv| at most {@code maxDuv}. */
    static CctDuv[] pairs(int n, double warmK, double coolK, double maxDuv) {
        SplittableRandom random = new SplittableRandom(SEED);
        CctDuv[] pairs = new CctDuv[n];
        for (int i = 0; i < n;) {
            double mired = random.nextDouble(1e6 / coolK, 1e6 / warmK);
            CctDuv pair = new CctDuv(1e6 / mired, random.nextDouble(-maxDuv, maxDuv));
            if (pair.isReal()) {
                pairs[i++] = pair;
            }
        }
        return pairs;
    }
}
