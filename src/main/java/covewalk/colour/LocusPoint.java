package covewalk.colour;

/**
 * A point of the Planckian locus in the CIE 1960 diagram, seen in the axes that the locus has there: the unit tangent
 * (tu, tv), pointing to the warm side, and the normal (-tv, tu), pointing up. The point itself lies {@code along} the
 * tangent and {@code across} it from the diagram's origin.
 *
 * @param turn how fast the tangent turns, in radian per mired; negative, as the locus bends down towards the warm end
 * @param speed length of locus per mired
 */
record LocusPoint(double tu, double tv, double along, double across, double turn, double speed) {

    /** The point at distance {@code duv} along the normal, positive above the locus. */
    Uv offset(double duv) {
        double height = across + duv;
        return new Uv(along * tu - height * tv, along * tv + height * tu);
    }

    /** Distance from another point of the diagram. */
    double distance(double u, double v) {
        return Math.hypot(u * tu + v * tv - along, v * tu - u * tv - across);
    }
}
