package covewalk.plot;

import covewalk.colour.Covariance;
import covewalk.colour.Jacobian;
import covewalk.colour.StepPlane;
import covewalk.colour.UvPrime;
import java.util.ArrayList;
import java.util.List;

/** Closed curves about a colour in the u', v' diagram: equal steps by a rule, or an uncertainty. */
final class UvRings {

    private static final int CORNERS = 60;

    private UvRings() {
    }

    /** All colours this many steps away: a circle, or the ellipse of the rule. */
    static List<UvPrime> steps(UvPrime centre, StepPlane plane, double steps) {
        Jacobian back = plane.fromUvPrime().inverse();
        List<UvPrime> ring = new ArrayList<>();
        for (int i = 0; i <= CORNERS; i++) {
            double p = steps * Math.cos(2 * Math.PI * i / CORNERS);
            double q = steps * Math.sin(2 * Math.PI * i / CORNERS);
            ring.add(centre.plus(back.first(p, q), back.second(p, q)));
        }
        return ring;
    }

    /** Two standard uncertainties in every direction. */
    static List<UvPrime> uncertainty(UvPrime centre, Covariance covariance) {
        Covariance.Axes axes = covariance.eigen();
        List<UvPrime> ring = new ArrayList<>();
        for (int i = 0; i <= CORNERS; i++) {
            double along = 2 * axes.larger() * Math.cos(2 * Math.PI * i / CORNERS);
            double across = 2 * axes.smaller() * Math.sin(2 * Math.PI * i / CORNERS);
            ring.add(centre.plus(along * axes.du() - across * axes.dv(), along * axes.dv() + across * axes.du()));
        }
        return ring;
    }
}
