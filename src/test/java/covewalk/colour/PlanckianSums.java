package covewalk.colour;

import java.util.List;

/**
 * The Planckian locus from its definition: Planck's law with c2 = 1.4388e-2 m K and n = 1 (CIE 15), summed with the
 * colour-matching functions at 1 nm from 360 to 830 nm. Slow and exact; {@link LocusTable} is made from it and measured by it.
 */
final class PlanckianSums {

    /** Second radiation constant in nm K (CIE 15). The CODATA value, 1.438777e-2 m K, shifts every CCT by 1.6e-5. */
    static final double C2_NM_K = 1.4388e7;

    private final List<ColourMatching> functions = ColourMatching.functions();

    /**
     * The point of the locus at a reciprocal temperature in mired, above 0: u, v, then their first and their second
     * derivatives by mired. The sums are differentiated term by term, not the results.
     */
    double[] at(double mired) {
        double[] u = new double[3];     // 4 X and its derivatives
        double[] v = new double[3];     // 6 Y
        double[] below = new double[3]; // X + 15 Y + 3 Z
        for (ColourMatching f : functions) {
            double[] power = power(f.wavelengthNm(), mired);
            for (int k = 0; k < power.length; k++) {
                u[k] += 4 * f.x() * power[k];
                v[k] += 6 * f.y() * power[k];
                below[k] += (f.x() + 15 * f.y() + 3 * f.z()) * power[k];
            }
        }
        divide(u, below);
        divide(v, below);
        return new double[] {u[0], v[0], u[1], v[1], u[2], v[2]};
    }

    /**
     * Spectral power of a black body at one wavelength, to a factor that does not depend on wavelength, and its
     * derivatives by mired: w^-4 x n with n = 1 / (e^x - 1) and x = c2 / (w T). As n' = -n (1 + n), every derivative
     * of n is a polynomial in n.
     */
    private static double[] power(double wavelengthNm, double mired) {
        double perMired = C2_NM_K / PlanckianLocus.MIRED / wavelengthNm;
        double x = perMired * mired;
        double n = 1 / Math.expm1(x);
        double n1 = -n * (1 + n);
        double n2 = -n1 * (1 + 2 * n);
        double scale = Math.pow(wavelengthNm / 560, -4); // 560 keeps the sums near 1
        return new double[] {scale * x * n, scale * perMired * (n + x * n1), scale * perMired * perMired * (2 * n1 + x * n2)};
    }

    /** Turns a numerator and its derivatives into those of the quotient (Leibniz's rule solved for the quotient). */
    private static void divide(double[] above, double[] below) {
        above[0] = above[0] / below[0];
        above[1] = (above[1] - above[0] * below[1]) / below[0];
        above[2] = (above[2] - 2 * above[1] * below[1] - above[0] * below[2]) / below[0];
    }
}
