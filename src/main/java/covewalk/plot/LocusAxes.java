package covewalk.plot;

import covewalk.colour.CctDuv;
import covewalk.colour.Covariance;
import covewalk.colour.Jacobian;
import covewalk.colour.StepPlane;
import covewalk.colour.UvPrime;

/** Steps from a colour along the locus and square to it, in the plane in which one step is 1 in any direction. */
final class LocusAxes {

    private final StepPlane plane;
    private final UvPrime origin;
    private final double a;
    private final double b;
    private final double greener;

    LocusAxes(StepPlane plane, UvPrime origin, CctDuv white) {
        this.plane = plane;
        this.origin = origin;
        Jacobian byCctDuv = white.jacobianToUvPrime();
        double du = byCctDuv.first(1, 0);
        double dv = byCctDuv.second(1, 0);
        double p = plane.fromUvPrime().first(du, dv);
        double q = plane.fromUvPrime().second(du, dv);
        a = p / Math.hypot(p, q);
        b = q / Math.hypot(p, q);
        double gu = byCctDuv.first(0, 1);
        double gv = byCctDuv.second(0, 1);
        greener = Math.signum(a * plane.fromUvPrime().second(gu, gv) - b * plane.fromUvPrime().first(gu, gv));
    }

    double along(UvPrime colour) {
        return a * first(colour) + b * second(colour);
    }

    double across(UvPrime colour) {
        return greener * (a * second(colour) - b * first(colour));
    }

    double sd(Covariance uvPrime, boolean along) {
        return along ? plane.carry(uvPrime).alongSd(a, b) : plane.carry(uvPrime).alongSd(-b, a);
    }

    private double first(UvPrime colour) {
        return plane.fromUvPrime().first(colour.u() - origin.u(), colour.v() - origin.v());
    }

    private double second(UvPrime colour) {
        return plane.fromUvPrime().second(colour.u() - origin.u(), colour.v() - origin.v());
    }
}
