package covewalk.colour;

/**
 * A point of the CIE 1976 UCS diagram (CIE 15), the plane in which neighbours are compared; u' and v' have no unit.
 * The diagram reaches farther than colours do, see {@link #isReal()}.
 */
public record UvPrime(double u, double v) {

    /** One step: a circle of this radius in u'v' (CIE TN 001:2014; the figure from memory). */
    public static final double STEP = 0.0011;

    private static final double ROUNDING = 1e-9;

    public UvPrime {
        if (!(u >= -ROUNDING && u <= 4 && v > 0 && v < 1.5)) { // u' = 4 is x = 1; written so that NaN is refused too
            throw new IllegalArgumentException("u' " + u + ", v' " + v
                    + " is outside the diagram: u' lies between 0 and 4, v' between 0 and 1.5");
        }
    }

    /** The distance to {@code other} in steps of {@link #STEP}: 0 from itself, the same both ways. */
    public double stepsTo(UvPrime other) {
        return Math.hypot(other.u - u, other.v - v) / STEP;
    }

    /** The point this far away. */
    public UvPrime plus(double du, double dv) {
        return new UvPrime(u + du, v + dv);
    }

    /** The same colour in the CIE 1960 diagram: v is v' / 1.5, u is u'. */
    public Uv toUv() {
        return new Uv(u, v / 1.5);
    }

    /**
     * The same colour in the CIE 1931 diagram.
     *
     * @throws IllegalArgumentException where x + y would exceed 1, which no colour's does
     */
    public Xy toXy() {
        double d = 12 + 6 * u - 16 * v;
        return new Xy(9 * u / d, 4 * v / d);
    }

    /** How x and y change with u' and v' at this colour. */
    public Jacobian jacobianToXy() {
        double d = 12 + 6 * u - 16 * v;
        double perSquare = 1 / (d * d);
        return new Jacobian((108 - 144 * v) * perSquare, 144 * u * perSquare,
                -24 * v * perSquare, (48 + 24 * u) * perSquare);
    }

    /** Whether a light can have this colour: it lies on or inside the spectral locus closed by the purple line. */
    public boolean isReal() {
        return toUv().isReal();
    }
}
