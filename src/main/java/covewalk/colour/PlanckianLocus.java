package covewalk.colour;

/** The colours of black bodies in the CIE 1960 diagram, and the way from any colour to the nearest of them. */
public final class PlanckianLocus {

    /** Mired times kelvin: reciprocal temperature is counted in mired, 1e6 / K. */
    static final double MIRED = 1e6;

    /** So far beyond the ends of the range, relative to CCT and absolute in Duv, a result still counts as on them. */
    private static final double CCT_ROUNDING = 1e-9;
    private static final double DUV_ROUNDING = 1e-12;

    private static final LocusTable TABLE = new LocusTable();

    private PlanckianLocus() {
    }

    /** The colour of a black body of {@code cctK} kelvin, 1000 to 20000; refused outside, as in {@link CctDuv}. */
    public static Uv at(double cctK) {
        return new CctDuv(cctK, 0).toUv();
    }

    /** The point at a reciprocal temperature in mired, 20 to 1028. */
    static LocusPoint point(double mired) {
        return TABLE.at(mired);
    }

    /** The point nearest to a colour, however far that is; an end of {@link LocusTable} where it lies beyond. */
    static LocusPoint pointNearest(double u, double v) {
        LocusStretch stretch = TABLE.nearest(u, v);
        return stretch.at(stretch.nearest(u, v));
    }

    /** See {@link ColourTemperature#of(Uv)}. */
    static ColourTemperature temperature(double u, double v) {
        if (!SpectralLocus.CIE_1931.holds(u, v)) {
            return NoCct.NO_REAL_COLOUR;
        }
        LocusStretch stretch = TABLE.nearest(u, v);
        double offset = stretch.nearest(u, v);
        double duv = stretch.duv(offset, u, v);
        double cctK = MIRED / (stretch.middle() + offset);
        if (Math.abs(duv) <= CctDuv.MAX_DUV && cctK >= CctDuv.MIN_CCT_K && cctK <= CctDuv.MAX_CCT_K) {
            return new CctDuv(cctK, duv);
        }
        return atTheEdge(cctK, duv, stretch.at(offset).distance(u, v));
    }

    /**
     * On the edge of the range or outside. At the hot end the locus stops, so that what is blue enough is far from it
     * however little it lies across; at the warm end it goes on, and only what lies across counts.
     */
    private static ColourTemperature atTheEdge(double cctK, double duv, double distance) {
        boolean above = cctK > CctDuv.MAX_CCT_K * (1 + CCT_ROUNDING);
        if ((above ? distance : Math.abs(duv)) > CctDuv.MAX_DUV + DUV_ROUNDING) {
            return NoCct.TOO_FAR_FROM_LOCUS;
        }
        if (above) {
            return NoCct.ABOVE_20000_K;
        }
        if (cctK < CctDuv.MIN_CCT_K * (1 - CCT_ROUNDING)) {
            return NoCct.BELOW_1000_K;
        }
        return new CctDuv(within(CctDuv.MIN_CCT_K, cctK, CctDuv.MAX_CCT_K), within(-CctDuv.MAX_DUV, duv, CctDuv.MAX_DUV));
    }

    private static double within(double least, double value, double most) {
        return Math.max(least, Math.min(value, most));
    }
}
