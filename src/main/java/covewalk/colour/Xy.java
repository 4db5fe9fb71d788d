package covewalk.colour;

/**
 * A chromaticity in the CIE 1931 x,y diagram (2 degree observer). It must lie in the triangle x >= 0, y > 0,
 * x + y <= 1; that still holds points no light can have, see {@link #isReal()}.
 */
public record Xy(double x, double y) {

    /** Lets x + y = 1 pass when one of them has been rounded in binary or went through another diagram and back. */
    private static final double ROUNDING = 1e-9;

    public Xy {
        if (!(x >= -ROUNDING && y > 0 && x + y <= 1 + ROUNDING)) { // written so that NaN is refused too
            throw new IllegalArgumentException("x " + x + ", y " + y
                    + " is no colour: x is at least 0, y is above 0, and together they are at most 1");
        }
    }

    /** The same colour in the CIE 1960 UCS diagram (CIE 15). */
    public Uv toUv() {
        double d = 3 - 2 * x + 12 * y;
        return new Uv(4 * x / d, 6 * y / d);
    }

    /** The same colour in the CIE 1976 UCS diagram (CIE 15). */
    public UvPrime toUvPrime() {
        double d = 3 - 2 * x + 12 * y;
        return new UvPrime(4 * x / d, 9 * y / d);
    }

    /** How u' and v' change with x and y at this colour. */
    public Jacobian jacobianToUvPrime() {
        double d = 3 - 2 * x + 12 * y;
        double perSquare = 1 / (d * d);
        return new Jacobian((12 + 48 * y) * perSquare, -48 * x * perSquare,
                18 * y * perSquare, (27 - 18 * x) * perSquare);
    }

    /** Whether a light can have this colour: it lies on or inside the spectral locus closed by the purple line. */
    public boolean isReal() {
        return toUv().isReal();
    }
}
