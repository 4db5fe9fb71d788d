package covewalk.colour;

/**
 * CCT and Duv after Ohno 2014 (LEUKOS 10, 47), with a table in steps of 1 % from the exact locus: a triangle with the
 * neighbours of the nearest row where |Duv| is below 0.002, else a parabola through three distances. Tuned: the nearest
 * row is found by bisection. The paper's correction 0.99991 is applied to both: so the 1 K that the paper claims comes
 * out, without it on the parabola 2.2 K. What the product is measured against; no part of it.
 */
final class Ohno {

    private static final double STEP = 1.01;
    private static final double CORRECTION = 0.99991;
    private static final int ROWS = 308; // 990 K to 21000 K

    private final double[] t = new double[ROWS];
    private final double[] u = new double[ROWS];
    private final double[] v = new double[ROWS];

    Ohno() {
        PlanckianSums sums = new PlanckianSums();
        double cctK = 990;
        for (int i = 0; i < ROWS; i++, cctK *= STEP) {
            double[] p = sums.at(1e6 / cctK);
            t[i] = cctK;
            u[i] = p[0];
            v[i] = p[1];
        }
    }

    CctDuv cctDuv(double atU, double atV) {
        int m = nearest(atU, atV);
        double before = distance(m - 1, atU, atV);
        double after = distance(m + 1, atU, atV);
        double length = Math.sqrt(square(m - 1, u[m + 1], v[m + 1]));
        double x = (before * before - after * after + length * length) / (2 * length);
        double sign = Math.signum(atV - (v[m - 1] + (v[m + 1] - v[m - 1]) * x / length));
        double duv = Math.sqrt(Math.max(0, before * before - x * x));
        if (duv < 0.002) {
            return pair(t[m - 1] + (t[m + 1] - t[m - 1]) * x / length, sign * duv);
        }
        double here = distance(m, atU, atV);
        double below = t[m - 1];
        double above = t[m + 1];
        double scale = 1 / ((above - t[m]) * (below - above) * (t[m] - below));
        double a = (below * (after - here) + t[m] * (before - after) + above * (here - before)) * scale;
        double b = -(below * below * (after - here) + t[m] * t[m] * (before - after) + above * above * (here - before)) * scale;
        double c = -(before * (above - t[m]) * t[m] * above + here * (below - above) * below * above
                + after * (t[m] - below) * below * t[m]) * scale;
        double best = -b / (2 * a);
        return pair(best, sign * ((a * best + b) * best + c));
    }

    private static CctDuv pair(double cctK, double duv) {
        return new CctDuv(Math.max(1000, Math.min(cctK * CORRECTION, 20_000)), Math.max(-0.05, Math.min(duv, 0.05)));
    }

    /** The row at the least distance, which falls towards it from both sides. */
    private int nearest(double atU, double atV) {
        int low = 1;
        int high = ROWS - 2;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (square(middle, atU, atV) > square(middle + 1, atU, atV)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private double distance(int i, double atU, double atV) {
        return Math.sqrt(square(i, atU, atV));
    }

    private double square(int i, double atU, double atV) {
        double du = atU - u[i];
        double dv = atV - v[i];
        return du * du + dv * dv;
    }
}
