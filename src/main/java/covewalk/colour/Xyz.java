package covewalk.colour;

/** CIE 1931 tristimulus values of a light, in any common unit; none is negative and their sum is not zero. */
public record Xyz(double x, double y, double z) {

    public Xyz {
        if (!(x >= 0 && y >= 0 && z >= 0 && x + y + z > 0 && x + y + z < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("X " + x + ", Y " + y + ", Z " + z
                    + " is no light: none may be negative, and one must be more than zero");
        }
    }

    /** The colour without its brightness (CIE 15). A light without luminance (Y = 0) has none and is refused. */
    public Xy chromaticity() {
        double sum = x + y + z;
        return new Xy(x / sum, y / sum);
    }
}
