package covewalk.colour;

/**
 * The Planckian locus between 100000 K and 833 K by interpolation. Tabulated every 10 mired: u, v and their first three
 * derivatives by mired, each summed from its definition; between two rows the polynomial of seventh degree that fits both
 * (Hermite). At Duv 0.05 that is within 1e-11 of CCT and 2e-13 of Duv.
 */
final class LocusTable {

    /** Where the table starts, in mired: 100000 K. The locus ends 0.0025 farther on. */
    static final double HOT_END = 10;

    /** From one row to the next, in mired. */
    static final double INTERVAL = 10;

    /** Value and derivatives in a row, for u and for v each. */
    static final int ORDERS = 4;

    /** The rows, each u and its derivatives, then v and its derivatives. */
    static final String FILE = "planckian-locus.bin";

    private static final int ROW = 2 * ORDERS;
    private static final int TERMS = 2 * ORDERS;

    private final int intervals;

    /** For each interval the coefficients of u, then those of v, in mired from its hot end. */
    private final double[] terms;

    /** For each row u, v and the unit tangent: the line across the locus there, an isotherm. */
    private final double[] isotherms;

    LocusTable() {
        double[] rows = StoredNumbers.read(FILE);
        intervals = rows.length / ROW - 1;
        terms = new double[intervals * 2 * TERMS];
        isotherms = new double[(intervals + 1) * 4];
        for (int i = 0; i < intervals; i++) {
            fit(rows, ROW * i, 2 * TERMS * i);
            fit(rows, ROW * i + ORDERS, 2 * TERMS * i + TERMS);
        }
        for (int i = 0; i <= intervals; i++) {
            isotherm(rows, ROW * i, 4 * i);
        }
    }

    /** The point at a reciprocal temperature in mired; beyond the table's ends, where its end intervals lead. */
    LocusPoint at(double mired) {
        double rows = (mired - HOT_END) / INTERVAL;
        int interval = Math.max(0, Math.min((int) rows, intervals - 1));
        return at(interval, mired - (HOT_END + INTERVAL * interval));
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
        double offset = INTERVAL * before / (before - ahead(interval + 1, u, v));
        offset += at(interval, offset).towards(u, v);
        offset += at(interval, offset).towards(u, v);
        return HOT_END + INTERVAL * interval + offset;
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

    /** How far a colour lies on the warm side of a row's isotherm. */
    private double ahead(int row, double u, double v) {
        int i = 4 * row;
        return (u - isotherms[i]) * isotherms[i + 2] + (v - isotherms[i + 1]) * isotherms[i + 3];
    }

    /** Horner's scheme for u, v and their derivatives at once. */
    private LocusPoint at(int interval, double offset) {
        int first = 2 * TERMS * interval;
        double u = 0;
        double u1 = 0;
        double u2 = 0;
        double u3 = 0;
        double v = 0;
        double v1 = 0;
        double v2 = 0;
        double v3 = 0;
        for (int i = first + TERMS - 1; i >= first; i--) {
            u3 = u3 * offset + u2;
            v3 = v3 * offset + v2;
            u2 = u2 * offset + u1;
            v2 = v2 * offset + v1;
            u1 = u1 * offset + u;
            v1 = v1 * offset + v;
            u = u * offset + terms[i];
            v = v * offset + terms[i + TERMS];
        }
        return new LocusPoint(u, v, u1, v1, 2 * u2, 2 * v2, 6 * u3, 6 * v3);
    }

    private void isotherm(double[] rows, int row, int to) {
        double u1 = rows[row + 1];
        double v1 = rows[row + ORDERS + 1];
        double speed = Math.sqrt(u1 * u1 + v1 * v1);
        isotherms[to] = rows[row];
        isotherms[to + 1] = rows[row + ORDERS];
        isotherms[to + 2] = u1 / speed;
        isotherms[to + 3] = v1 / speed;
    }

    /** Hermite's polynomial of seventh degree: four terms from the row at the hot end, four more to meet the next. */
    private void fit(double[] rows, int hot, int to) {
        double h = INTERVAL;
        int warm = hot + ROW;
        double c0 = rows[hot];
        double c1 = rows[hot + 1] * h;
        double c2 = rows[hot + 2] * h * h / 2;
        double c3 = rows[hot + 3] * h * h * h / 6;
        double d0 = rows[warm] - c0 - c1 - c2 - c3;
        double d1 = rows[warm + 1] * h - c1 - 2 * c2 - 3 * c3;
        double d2 = rows[warm + 2] * h * h - 2 * c2 - 6 * c3;
        double d3 = rows[warm + 3] * h * h * h - 6 * c3;
        double[] inFractions = {c0, c1, c2, c3, 35 * d0 - 15 * d1 + 2.5 * d2 - d3 / 6,
            -84 * d0 + 39 * d1 - 7 * d2 + d3 / 2, 70 * d0 - 34 * d1 + 6.5 * d2 - d3 / 2,
            -20 * d0 + 10 * d1 - 2 * d2 + d3 / 6};
        double scale = 1;
        for (int k = 0; k < TERMS; k++) {
            terms[to + k] = inFractions[k] * scale;
            scale /= h;
        }
    }
}
