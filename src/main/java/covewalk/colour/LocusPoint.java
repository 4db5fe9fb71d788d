package covewalk.colour;

/**
 * A point of the Planckian locus in the CIE 1960 diagram, with its first and second derivatives by reciprocal
 * temperature in mired (1e6 / K); they grow towards the warm end.
 */
record LocusPoint(double u, double v, double du, double dv, double ddu, double ddv) {

    /** Length of locus per mired. */
    double speed() {
        return Math.sqrt(du * du + dv * dv);
    }

    /** Signed curvature; negative, as the locus bends down on its way to the warm end. */
    double curvature() {
        double speed = speed();
        return (du * ddv - dv * ddu) / (speed * speed * speed);
    }

    /** The point at distance {@code duv} along the normal, positive above the locus. */
    Uv offset(double duv) {
        double scale = duv / speed();
        return new Uv(u - scale * dv, v + scale * du);
    }
}
