package covewalk.colour;

/** CCT and Duv by their definition: the point of the summed locus at the least distance, found by Newton's method. */
final class ExactSearch {

    private final PlanckianSums sums = new PlanckianSums();

    /** The point at distance {@code duv} along the normal. */
    Uv toUv(double mired, double duv) {
        double[] p = sums.at(mired);
        double speed = Math.hypot(p[2], p[3]);
        return new Uv(p[0] - duv * p[3] / speed, p[1] + duv * p[2] / speed);
    }

    /** Reciprocal CCT in mired and Duv of the nearest point, searched from {@code start}. */
    double[] nearest(Uv uv, double start) {
        double mired = start;
        for (int i = 0; i < 50; i++) {
            double[] p = sums.at(mired);
            double du = uv.u() - p[0];
            double dv = uv.v() - p[1];
            double step = (du * p[2] + dv * p[3]) / (p[2] * p[2] + p[3] * p[3] - du * p[4] - dv * p[5]);
            mired += step;
            if (Math.abs(step) < 1e-13 * mired) {
                break;
            }
        }
        double[] p = sums.at(mired);
        double sign = (uv.v() - p[1]) * p[2] - (uv.u() - p[0]) * p[3];
        return new double[] {mired, Math.copySign(Math.hypot(uv.u() - p[0], uv.v() - p[1]), sign)};
    }
}
