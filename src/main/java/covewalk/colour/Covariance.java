package covewalk.colour;

/**
 * The uncertainty of a pair of values: the variance of the first, their covariance, the variance of the second. Mostly
 * of u' and v' (no unit), or of a difference in the plane of {@link StepPlane} (steps squared).
 */
public record Covariance(double uu, double uv, double vv) {

    /** No uncertainty. */
    public static final Covariance ZERO = new Covariance(0, 0, 0);

    /** By how much rounding may take a covariance past the bound that its variances set. */
    private static final double ROUNDING = 1e-9;

    public Covariance {
        boolean variances = uu >= 0 && vv >= 0 && uu < Double.POSITIVE_INFINITY && vv < Double.POSITIVE_INFINITY;
        if (!(variances && Math.abs(uv) <= Math.sqrt(uu) * Math.sqrt(vv) + ROUNDING * (uu + vv))) {
            throw new IllegalArgumentException("variances " + uu + " and " + vv + " with covariance " + uv
                    + " cannot be: no variance is negative, and the covariance is at most the root of their product");
        }
    }

    /** The same standard uncertainty {@code sd} in every direction; {@code sd} is not negative. */
    public static Covariance isotropic(double sd) {
        if (!(sd >= 0)) {
            throw new IllegalArgumentException("a standard uncertainty of " + sd + " cannot be: it is 0 or more");
        }
        return new Covariance(sd * sd, 0, sd * sd);
    }

    /** The uncertainty of the sum, or of the difference, of two independent pairs. */
    public Covariance plus(Covariance other) {
        return new Covariance(uu + other.uu, uv + other.uv, vv + other.vv);
    }

    /** All variances times {@code factor}, which is not negative: 1/n for the mean of n. */
    public Covariance times(double factor) {
        return new Covariance(uu * factor, uv * factor, vv * factor);
    }

    /** The largest and the smallest standard uncertainty, and where the largest lies. */
    public Axes eigen() {
        double mean = (uu + vv) / 2;
        double half = Math.hypot((uu - vv) / 2, uv);
        double angle = half == 0 ? 0 : Math.atan2(2 * uv, uu - vv) / 2;
        return new Axes(Math.sqrt(mean + half), Math.sqrt(Math.max(mean - half, 0)), Math.cos(angle), Math.sin(angle));
    }

    /**
     * The standard uncertainty along a direction, whatever the direction's length; without a direction (0, 0) the
     * largest there is.
     */
    public double alongSd(double du, double dv) {
        double length = Math.hypot(du, dv);
        if (length == 0) {
            return eigen().larger();
        }
        double a = du / length;
        double b = dv / length;
        return Math.sqrt(Math.max(a * a * uu + 2 * a * b * uv + b * b * vv, 0));
    }

    /** Principal axes: the larger and the smaller standard uncertainty, and the unit vector along the larger. */
    public record Axes(double larger, double smaller, double du, double dv) {
    }
}
