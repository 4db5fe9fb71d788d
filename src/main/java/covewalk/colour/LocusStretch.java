package covewalk.colour;

/**
 * A stretch of the Planckian locus, its axes as polynomials in mired from the stretch's middle.
 *
 * @param middle reciprocal temperature of the middle in mired
 */
record LocusStretch(double middle, Septic tu, Septic tv, Septic along, Septic across) {

    private static final double HALF = LocusTable.STRETCH / 2;

    /** The point at {@code offset} mired from the middle. */
    LocusPoint at(double offset) {
        double u = tu.value(offset);
        double v = tv.value(offset);
        double turn = u * tv.slope(offset) - v * tu.slope(offset);
        double height = across.value(offset);
        return new LocusPoint(u, v, along.value(offset), height, turn, along.slope(offset) - turn * height);
    }

    /**
     * The offset of the point nearest to a colour that lies between the isotherms of this stretch's ends, to 1e-10 mired;
     * for a colour that does not, somewhere in this stretch, mostly the end nearer to it.
     */
    double nearest(double u, double v) {
        Septic ahead = tu.blend(u, tv, v, along); // how far the colour is on the warm side of the isotherm at each offset
        double offset = ahead.nearerToZero(ahead.nearZero());
        return Math.abs(offset) <= HALF ? offset : Math.copySign(HALF, ahead.c0());
    }

    /** How far a colour lies above the tangent at an offset. */
    double duv(double offset, double u, double v) {
        return tu.blend(v, tv, -u, across).value(offset);
    }
}
