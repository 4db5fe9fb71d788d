package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.colour.Towards;
import covewalk.colour.UvPrime;
import java.util.OptionalDouble;

/**
 * A measured difference of two colours.
 *
 * @param from the colour on the datum's side
 * @param to the colour on the far side
 * @param covariance of {@code to - from} in u', v'
 * @param steps its length, by the survey's step rule
 * @param standardUncertaintySteps along the difference (k = 1), by the same rule
 * @param deltaCctK CCT of {@code to} less that of {@code from}, K; empty where one of them has none
 * @param deltaDuv likewise Duv
 * @param luxRatio lux on the far side over lux on the datum's side; empty where a side has none
 */
public record Difference(UvPrime from, UvPrime to, Covariance covariance, double steps,
                         double standardUncertaintySteps, OptionalDouble deltaCctK, OptionalDouble deltaDuv,
                         OptionalDouble luxRatio) {

    public double deltaUPrime() {
        return to.u() - from.u();
    }

    public double deltaVPrime() {
        return to.v() - from.v();
    }

    /** Towards what colour it goes, seen from the datum's side. */
    public Towards towards() {
        return Towards.from(from, to);
    }
}
