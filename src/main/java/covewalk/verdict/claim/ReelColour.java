package covewalk.verdict.claim;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.Reads;
import covewalk.survey.SetUp;
import covewalk.verdict.limit.RoundShares;
import covewalk.verdict.stretch.Stretch;
import java.util.List;

/**
 * The mean colour of a reel over all its placements, by the readings of one set-up.
 *
 * @param shrinking repeatability, scatter and digits of that mean, in u', v'
 * @param staying what more readings do not make smaller: coarse digits, and the meter's error against the true colour
 * @param degrees of freedom with which {@code shrinking} was estimated; infinite where it was declared
 * @param round the highest among the readings
 * @param varies whether a change or a drift was found inside the reel, so that its mean speaks for no part of it
 */
record ReelColour(SetUp setUp, UvPrime colour, Covariance shrinking, Covariance staying, double degrees, int round,
                  boolean varies) {

    /** @param stretches of the reel and the set-up, at least one; each counts by its length */
    static ReelColour of(List<Stretch> stretches, SetUp setUp) {
        double length = stretches.stream().mapToDouble(Stretch::lengthM).sum();
        double u = 0;
        double v = 0;
        Covariance shrinking = Covariance.ZERO;
        Covariance staying = Covariance.isotropic(setUp.absoluteUv());
        for (Stretch stretch : stretches) {
            double share = stretch.lengthM() / length;
            UvPrime middle = stretch.line().at(stretch.middleM());
            u += share * middle.u();
            v += share * middle.v();
            shrinking = shrinking.plus(stretch.line().shrinkingAt(stretch.middleM()).sum().times(share * share));
            staying = staying.plus(stretch.line().common().times(share));
        }
        double degrees = stretches.stream().mapToDouble(stretch -> stretch.noise().degrees()).min().orElseThrow();
        int round = stretches.stream().mapToInt(Stretch::round).max().orElseThrow();
        return new ReelColour(setUp, new UvPrime(u, v), shrinking, staying, degrees, round, varies(stretches));
    }

    private static boolean varies(List<Stretch> stretches) {
        long placements = stretches.stream().map(Stretch::placement).distinct().count();
        return stretches.size() > placements || stretches.stream().anyMatch(stretch -> stretch.line().drifts());
    }

    Covariance covariance() {
        return shrinking.plus(staying);
    }

    boolean direct() {
        return setUp.reads() == Reads.STRIP;
    }

    /** The share of wrong verdicts that this round may spend. */
    double rate(double errorRate) {
        return errorRate * RoundShares.of(round);
    }

    /** Degrees of freedom of the whole, of which a share was declared (Welch-Satterthwaite, GUM G.4.1). */
    double wholeDegrees() {
        double all = covariance().uu() + covariance().vv();
        double share = all > 0 ? (shrinking.uu() + shrinking.vv()) / all : 0;
        return share > 0 ? degrees / (share * share) : Double.POSITIVE_INFINITY;
    }
}
