package covewalk.colour;

/**
 * The Planckian locus between 50000 K and 973 K by interpolation, in stretches of 28 mired. Held is not u, v by
 * temperature but the line across the locus at each temperature, its isotherm: the direction of the tangent, and how far
 * from the origin of the CIE 1960 diagram the point lies along and across it ({@link LocusPoint}). So a colour's CCT is
 * the zero of one polynomial, and its Duv the value of another. In each stretch all are of seventh degree, through the
 * exact values at Chebyshev's points; at Duv 0.05 that is within 2e-11 of CCT and 2e-13 of u, v and Duv.
 */
final class LocusTable {

    /** Where the table starts, in mired: 50000 K. The locus ends 0.005 farther on. */
    static final double HOT_END = 20;

    /** Length of a stretch in mired. */
    static final double STRETCH = 28;

    /** A square, as the search makes two equal rounds: the first over every sixth isotherm, the second between two. */
    private static final int ROUND = 6;
    static final int STRETCHES = ROUND * ROUND;

    /** Polynomials of a stretch: tu, tv, along, across. */
    static final int PARTS = 4;

    /** For each stretch, and each power of the offset from its middle in mired, the four polynomials' terms. */
    static final String FILE = "planckian-locus.bin";

    private final LocusStretch[] stretches = new LocusStretch[STRETCHES];

    /** tu, tv and along at the hot end of each stretch. */
    private final double[] isotherms = new double[3 * STRETCHES];

    LocusTable() {
        double[] terms = StoredNumbers.read(FILE);
        for (int i = 0; i < STRETCHES; i++) {
            int first = i * Septic.TERMS * PARTS;
            stretches[i] = new LocusStretch(HOT_END + STRETCH * (i + 0.5), Septic.read(terms, first, PARTS),
                    Septic.read(terms, first + 1, PARTS), Septic.read(terms, first + 2, PARTS),
                    Septic.read(terms, first + 3, PARTS));
            LocusPoint p = stretches[i].at(-STRETCH / 2);
            isotherms[3 * i] = p.tu();
            isotherms[3 * i + 1] = p.tv();
            isotherms[3 * i + 2] = p.along();
        }
    }

    /** The point at a reciprocal temperature in mired; beyond the table's ends, where its end stretches lead. */
    LocusPoint at(double mired) {
        int i = Math.max(0, Math.min((int) ((mired - HOT_END) / STRETCH), STRETCHES - 1));
        return stretches[i].at(mired - stretches[i].middle());
    }

    /**
     * The stretch whose two isotherms a colour lies between. The first, all above 20000 K, and the last, all below
     * 1000 K, are also for colours beyond them. It counts the isotherms that the colour is ahead of: halving would look
     * at fewer, but the processor cannot guess which way each half goes, and waits.
     */
    LocusStretch nearest(double u, double v) {
        int first = ROUND * count(0, ROUND, u, v);
        return stretches[first + count(first, 1, u, v)];
    }

    private int count(int first, int step, double u, double v) {
        int count = 0;
        for (int k = 1; k < ROUND; k++) {
            int i = 3 * (first + k * step);
            count += u * isotherms[i] + v * isotherms[i + 1] > isotherms[i + 2] ? 1 : 0;
        }
        return count;
    }
}
