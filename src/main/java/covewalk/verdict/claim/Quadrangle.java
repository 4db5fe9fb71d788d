package covewalk.verdict.claim;

import covewalk.colour.Covariance;
import covewalk.colour.NominalCct;
import covewalk.colour.Xy;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.LimitTest;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;

/** How surely a colour lies in a quadrangle of ANSI C78.377, or outside, with guard bands as in JCGM 106, 8.3. */
final class Quadrangle {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private Quadrangle() {
    }

    /**
     * Within where it is sure of every edge, since who lies outside lies beyond one of them. Beyond where it is sure of
     * one edge, each given a quarter of the error rate: who lies inside has four edges to be falsely found beyond.
     *
     * @param covariance of the colour in x, y
     * @param degrees of freedom of it
     */
    static Confidence of(NominalCct nominal, Xy colour, Covariance covariance, double degrees) {
        List<Xy> corners = nominal.corners();
        double within = 1;
        double beyond = 0;
        for (int i = 0; i < corners.size(); i++) {
            double sds = sdsInside(corners.get(i), corners.get((i + 1) % corners.size()), colour, covariance);
            Confidence edge = LimitTest.widened(new Confidence(sure(-sds, 1), sure(sds, 1)), degrees);
            within = Math.min(within, edge.within());
            beyond = Math.max(beyond, 1 - corners.size() * (1 - edge.beyond()));
        }
        return new Confidence(Math.max(0, beyond), within);
    }

    /** The confidence that something lies a margin inside a single limit: Phi(margin / sd), JCGM 106, 7.3. */
    static double sure(double margin, double sd) {
        return NORMAL.cumulativeProbability(margin / sd);
    }

    /** The corners go round anticlockwise, so that inside lies to the left of every edge. */
    private static double sdsInside(Xy from, Xy to, Xy colour, Covariance covariance) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double inside = (dx * (colour.y() - from.y()) - dy * (colour.x() - from.x())) / Math.hypot(dx, dy);
        return inside / Math.max(covariance.alongSd(-dy, dx), 1e-9);
    }
}
