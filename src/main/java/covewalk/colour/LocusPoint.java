package covewalk.colour;

/**
 * A point of the Planckian locus in the CIE 1960 diagram, with the first three derivatives by reciprocal temperature in
 * mired (1e6 / K), which grows towards the warm end.
 */
record LocusPoint(double u, double v, double u1, double v1, double u2, double v2, double u3, double v3) {

    /** Length of locus per mired. */
    double speed() {
        return Math.sqrt(u1 * u1 + v1 * v1);
    }

    /** Signed curvature; negative, as the locus bends down on its way to the warm end. */
    double curvature() {
        double speed = speed();
        return (u1 * v2 - v1 * u2) / (speed * speed * speed);
    }

    /** The point at distance {@code duv} along the normal, positive above the locus. */
    Uv offset(double duv) {
        double scale = duv / speed();
        return new Uv(u - scale * v1, v + scale * u1);
    }

    /** How far another point lies from the tangent here, positive above: its Duv if this is the nearest of the locus. */
    double duv(double ofU, double ofV) {
        return ((ofV - v) * u1 - (ofU - u) * v1) / speed();
    }

    /**
     * The way in mired from here to the point nearest to another, by one step of Halley's method: each step leaves about
     * the cube of the error before.
     */
    double towards(double ofU, double ofV) {
        double du = ofU - u;
        double dv = ofV - v;
        double f = du * u1 + dv * v1; // 0 where the line to the other point meets the locus at a right angle
        double f1 = du * u2 + dv * v2 - u1 * u1 - v1 * v1;
        double f2 = du * u3 + dv * v3 - 3 * (u1 * u2 + v1 * v2);
        return -2 * f * f1 / (2 * f1 * f1 - f * f2);
    }
}
