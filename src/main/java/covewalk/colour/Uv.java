package covewalk.colour;

/**
 * A point of the CIE 1960 UCS diagram (CIE 15), the plane in which CCT and Duv are defined; no unit.
 * The diagram reaches farther than colours do, see {@link #isReal()}.
 */
public record Uv(double u, double v) {

    private static final double ROUNDING = 1e-9;

    public Uv {
        if (!(u >= -ROUNDING && u <= 4 && v > 0 && v < 1)) { // u = 4 is x = 1; written so that NaN is refused too
            throw new IllegalArgumentException("u " + u + ", v " + v
                    + " is outside the diagram: u lies between 0 and 4, v between 0 and 1");
        }
    }

    /**
     * The same colour in the CIE 1931 diagram.
     *
     * @throws IllegalArgumentException where x + y would exceed 1, which no colour's does
     */
    public Xy toXy() {
        double d = 4 + 2 * u - 8 * v;
        return new Xy(3 * u / d, 2 * v / d);
    }

    /** The same colour in the CIE 1976 diagram: v' is 1.5 v, u' is u. */
    public UvPrime toUvPrime() {
        return new UvPrime(u, 1.5 * v);
    }

    /** Whether a light can have this colour: it lies on or inside the spectral locus closed by the purple line. */
    public boolean isReal() {
        return SpectralLocus.CIE_1931.holds(u, v);
    }
}
