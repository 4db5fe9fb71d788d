package covewalk.colour;

/**
 * A colour by its correlated colour temperature in kelvin, 1000 to 20000, and its distance Duv from the Planckian locus
 * in the CIE 1960 diagram, -0.05 to 0.05, positive above the locus (greenish), negative below it (pinkish).
 *
 * <p>A pair in range may still be no colour: above the locus at low temperatures the spectral locus is nearer than 0.05:
 * 0.0302 away at 3000 K, 0.0005 at 1000 K. Ask {@link #isReal()} before {@link #toXy()}.
 */
public record CctDuv(double cctK, double duv) implements ColourTemperature {

    /** Lowest CCT, in kelvin. */
    public static final double MIN_CCT_K = 1000;

    /** Highest CCT, in kelvin. */
    public static final double MAX_CCT_K = 20_000;

    /** Farthest from the locus on either side; beyond it CIE 15 gives CCT no meaning. */
    public static final double MAX_DUV = 0.05;

    public CctDuv {
        if (!(cctK >= MIN_CCT_K && cctK <= MAX_CCT_K)) { // written so that NaN is refused too
            throw new IllegalArgumentException("CCT " + cctK + " K is outside 1000 to 20000 K");
        }
        if (!(Math.abs(duv) <= MAX_DUV)) {
            throw new IllegalArgumentException("Duv " + duv + " is outside -0.05 to 0.05");
        }
    }

    /** The point at this distance along the normal of the locus; for every pair, real colour or not. */
    public Uv toUv() {
        return locus().offset(duv);
    }

    /** As {@link #toUv()}, in the CIE 1976 diagram. */
    public UvPrime toUvPrime() {
        return toUv().toUvPrime();
    }

    /**
     * As {@link #toUv()}, in the CIE 1931 diagram.
     *
     * @throws IllegalArgumentException where x + y would exceed 1; never for a pair that {@link #isReal()}
     */
    public Xy toXy() {
        return toUv().toXy();
    }

    /** Whether a light can have this colour. */
    public boolean isReal() {
        return toUv().isReal();
    }

    /** How u' and v' change with CCT (per kelvin) and with Duv. */
    public Jacobian jacobianToUvPrime() {
        LocusPoint p = locus();
        double perKelvin = (p.speed() - p.turn() * duv) * -PlanckianLocus.MIRED / (cctK * cctK);
        return new Jacobian(p.tu() * perKelvin, -p.tv(), 1.5 * p.tv() * perKelvin, 1.5 * p.tu());
    }

    private LocusPoint locus() {
        return PlanckianLocus.point(PlanckianLocus.MIRED / cctK);
    }
}
