package covewalk.colour;

/**
 * How two quantities change with two others, to first order: {@code a} and {@code b} are the derivatives of the first
 * by the first and by the second, {@code c} and {@code d} those of the second. The units are the caller's.
 */
public record Jacobian(double a, double b, double c, double d) {

    public Jacobian {
        if (!Double.isFinite(a + b + c + d)) {
            throw new IllegalArgumentException("derivatives " + a + ", " + b + ", " + c + ", " + d + " are not all finite");
        }
    }

    /** The first quantity's change for these changes of the two it depends on. */
    public double first(double d1, double d2) {
        return a * d1 + b * d2;
    }

    /** The second quantity's change for these changes of the two it depends on. */
    public double second(double d1, double d2) {
        return c * d1 + d * d2;
    }

    /** This change after {@code inner}: from what {@code inner} takes to what this gives. */
    public Jacobian times(Jacobian inner) {
        return new Jacobian(a * inner.a + b * inner.c, a * inner.b + b * inner.d,
                c * inner.a + d * inner.c, c * inner.b + d * inner.d);
    }

    /** By how much an area grows; negative where the two quantities change sides, 0 where there is no way back. */
    public double determinant() {
        return a * d - b * c;
    }

    /**
     * The way back.
     *
     * @throws ArithmeticException where the determinant is 0
     */
    public Jacobian inverse() {
        double det = determinant();
        if (det == 0) {
            throw new ArithmeticException("two quantities that change together have no inverse");
        }
        return new Jacobian(d / det, -b / det, -c / det, a / det);
    }

    /** What an uncertainty of the two inputs becomes (GUM 5.2: J C J'). */
    public Covariance carry(Covariance in) {
        double uu = a * a * in.uu() + 2 * a * b * in.uv() + b * b * in.vv();
        double uv = a * c * in.uu() + (a * d + b * c) * in.uv() + b * d * in.vv();
        double vv = c * c * in.uu() + 2 * c * d * in.uv() + d * d * in.vv();
        return new Covariance(Math.max(uu, 0), uv, Math.max(vv, 0)); // rounding may leave a variance below 0
    }
}
