package covewalk.colour;

/** The colours of black bodies in the CIE 1960 diagram, and the way from any colour to the nearest of them. */
public final class PlanckianLocus {

    /** Mired times kelvin: reciprocal temperature is counted in mired, 1e6 / K. */
    static final double MIRED = 1e6;

    private static final PlanckianSums SUMS = new PlanckianSums();
    private static final double HOT_END = 10;
    private static final double WARM_END = 1200;

    private PlanckianLocus() {
    }

    /** The colour of a black body of {@code cctK} kelvin, 1000 to 20000. */
    public static Uv at(double cctK) {
        return new CctDuv(cctK, 0).toUv();
    }

    static LocusPoint point(double mired) {
        return SUMS.at(mired);
    }

    /** See {@link ColourTemperature#of(Uv)}. */
    static ColourTemperature nearest(double u, double v) {
        if (!SpectralLocus.holds(u, v)) {
            return NoCct.NO_REAL_COLOUR;
        }
        double mired = foot(u, v);
        LocusPoint p = point(mired);
        double duv = ((v - p.v()) * p.du() - (u - p.u()) * p.dv()) / p.speed();
        if (Math.abs(duv) > CctDuv.MAX_DUV + 1e-12) {
            return NoCct.TOO_FAR_FROM_LOCUS;
        }
        double cct = MIRED / mired;
        if (cct < CctDuv.MIN_CCT_K * (1 - 1e-9)) {
            return NoCct.BELOW_1000_K;
        }
        if (cct > CctDuv.MAX_CCT_K * (1 + 1e-9)) {
            return NoCct.ABOVE_20000_K;
        }
        return new CctDuv(Math.max(CctDuv.MIN_CCT_K, Math.min(CctDuv.MAX_CCT_K, cct)),
                Math.max(-CctDuv.MAX_DUV, Math.min(CctDuv.MAX_DUV, duv)));
    }

    /** The mired of the nearest point. */
    static double foot(double u, double v) {
        double low = HOT_END;
        double high = WARM_END;
        double mired = 300;
        for (int i = 0; i < 100; i++) {
            LocusPoint p = point(mired);
            double ahead = (u - p.u()) * p.du() + (v - p.v()) * p.dv();
            if (ahead > 0) {
                low = mired;
            } else {
                high = mired;
            }
            double slope = (u - p.u()) * p.ddu() + (v - p.v()) * p.ddv() - p.du() * p.du() - p.dv() * p.dv();
            double next = mired - ahead / slope;
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - mired) < 1e-12 * mired) {
                return next;
            }
            mired = next;
        }
        return mired;
    }
}
