package covewalk.colour;

/**
 * The Planckian locus between 100000 K and 826 K by interpolation, in intervals of 20 mired. Held is not u, v by
 * temperature but the line across the locus at each temperature, its isotherm: the direction of the tangent, and how far
 * from the origin of the CIE 1960 diagram the point lies along and across it ({@link LocusPoint}). So a colour's CCT is
 * the zero of one polynomial, and its Duv the value of another. In each interval all are of seventh degree, through the
 * exact values at Chebyshev's points; at Duv 0.05 that is within 1e-12 of CCT and 1e-14 of Duv.
 */
final class LocusTable {

    /** Where the table starts, in mired: 100000 K. The locus ends 0.0025 farther on. */
    static final double HOT_END = 10;

    /** Width of an interval in mired. */
    static final double INTERVAL = 20;

    /** Terms of each polynomial. */
    static final int TERMS = 8;

    /** Polynomials of an interval: tu, tv, along, across. */
    static final int PARTS = 4;

    /** For each interval, and each power of the distance from its middle in mired, the four polynomials' terms. */
    static final String FILE = "planckian-locus.bin";

    private static final int STRIDE = TERMS * PARTS;

    private final double[] terms = StoredNumbers.read(FILE);
    private final int intervals = terms.length / STRIDE;

    /** Four numbers for each interval's hot end. */
    private final double[] isotherms = new double[(intervals + 1) * PARTS];

    LocusTable() {
        for (int i = 0; i <= intervals; i++) {
            LocusPoint p = at(HOT_END + INTERVAL * i);
            isotherms[PARTS * i] = p.tu();
            isotherms[PARTS * i + 1] = p.tv();
            isotherms[PARTS * i + 2] = p.along();
        }
    }

    /** The point at a reciprocal temperature in mired; beyond the table's ends, where its end intervals lead. */
    LocusPoint at(double mired) {
        int interval = Math.max(0, Math.min((int) ((mired - HOT_END) / INTERVAL), intervals - 1));
        return at(interval, mired - middle(interval));
    }

    /** The reciprocal temperature, in mired, of the point nearest to a colour; the table's end where that lies beyond it. */
    double nearest(double u, double v) {
        if (ahead(0, u, v) <= 0) {
            return HOT_END;
        }
        if (ahead(intervals, u, v) >= 0) {
            return HOT_END + INTERVAL * intervals;
        }
        int interval = between(u, v);
        double before = ahead(interval, u, v);
        double offset = INTERVAL * (before / (before - ahead(interval + 1, u, v)) - 0.5);
        offset = nearer(interval, offset, u, v);
        offset = nearer(interval, offset, u, v);
        return middle(interval) + offset;
    }

    /** One step of Halley's method towards the isotherm that a colour lies on; it leaves about the cube of the error. */
    private double nearer(int interval, double offset, double u, double v) {
        double f = 0;
        double f1 = 0;
        double f2 = 0; // half the second derivative
        for (int i = STRIDE * interval + STRIDE - PARTS; i >= STRIDE * interval; i -= PARTS) {
            f2 = f2 * offset + f1;
            f1 = f1 * offset + f;
            f = f * offset + (u * terms[i] + v * terms[i + 1] - terms[i + 2]);
        }
        return offset - f * f1 / (f1 * f1 - f * f2);
    }

    /** The interval whose two isotherms a colour lies between. */
    private int between(double u, double v) {
        int hot = 0;
        int warm = intervals;
        while (warm - hot > 1) {
            int middle = (hot + warm) >>> 1;
            if (ahead(middle, u, v) > 0) {
                hot = middle;
            } else {
                warm = middle;
            }
        }
        return hot;
    }

    /** How far a colour lies on the warm side of the isotherm at an interval's hot end. */
    private double ahead(int interval, double u, double v) {
        int i = PARTS * interval;
        return u * isotherms[i] + v * isotherms[i + 1] - isotherms[i + 2];
    }

    private static double middle(int interval) {
        return HOT_END + INTERVAL / 2 + INTERVAL * interval;
    }

    private LocusPoint at(int interval, double offset) {
        double tu = 0;
        double tv = 0;
        double along = 0;
        double across = 0;
        double tu1 = 0;
        double tv1 = 0;
        double along1 = 0;
        for (int i = STRIDE * interval + STRIDE - PARTS; i >= STRIDE * interval; i -= PARTS) {
            tu1 = tu1 * offset + tu;
            tv1 = tv1 * offset + tv;
            along1 = along1 * offset + along;
            tu = tu * offset + terms[i];
            tv = tv * offset + terms[i + 1];
            along = along * offset + terms[i + 2];
            across = across * offset + terms[i + 3];
        }
        double turn = tu * tv1 - tv * tu1;
        return new LocusPoint(tu, tv, along, across, turn, along1 - turn * across);
    }
}
