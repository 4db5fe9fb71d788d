package covewalk.colour;

import java.util.List;

/**
 * CCT after Robertson 1968 (J. Opt. Soc. Am. 58, 1528), tuned: isotherms as unit vectors made beforehand, and bisection
 * instead of a walk through the table. What the product is measured against; no part of it.
 */
final class Robertson {

    private final double[] mired;
    private final double[] u;
    private final double[] v;
    private final double[] tu;
    private final double[] tv;

    Robertson() {
        List<double[]> rows = PrintedTable.rows("robertson-1968.csv",
                row -> new double[] {row.number(0), row.number(1), row.number(2), row.number(3)});
        int n = rows.size();
        mired = new double[n];
        u = new double[n];
        v = new double[n];
        tu = new double[n];
        tv = new double[n];
        for (int i = 0; i < n; i++) {
            double[] row = rows.get(i);
            double length = Math.sqrt(1 + row[3] * row[3]);
            mired[i] = row[0];
            u[i] = row[1];
            v[i] = row[2];
            tu[i] = -row[3] / length; // across the isotherm, towards the warm end
            tv[i] = 1 / length;
        }
    }

    /** CCT alone, in kelvin. */
    double cct(double atU, double atV) {
        int i = between(atU, atV);
        double before = ahead(i, atU, atV);
        double share = before / (before - ahead(i + 1, atU, atV));
        return 1e6 / (mired[i] + share * (mired[i + 1] - mired[i]));
    }

    /** CCT and Duv, both read off between the two isotherms. */
    CctDuv cctDuv(double atU, double atV) {
        int i = between(atU, atV);
        double before = ahead(i, atU, atV);
        double share = before / (before - ahead(i + 1, atU, atV));
        double du = atU - (u[i] + share * (u[i + 1] - u[i]));
        double dv = atV - (v[i] + share * (v[i + 1] - v[i]));
        double nu = -(tv[i] + share * (tv[i + 1] - tv[i]));
        double nv = tu[i] + share * (tu[i + 1] - tu[i]);
        double duv = (du * nu + dv * nv) / Math.sqrt(nu * nu + nv * nv);
        return new CctDuv(1e6 / (mired[i] + share * (mired[i + 1] - mired[i])), Math.max(-0.05, Math.min(duv, 0.05)));
    }

    private int between(double atU, double atV) {
        int hot = 0;
        int warm = mired.length - 1;
        while (warm - hot > 1) {
            int middle = (hot + warm) >>> 1;
            if (ahead(middle, atU, atV) > 0) {
                hot = middle;
            } else {
                warm = middle;
            }
        }
        return hot;
    }

    private double ahead(int i, double atU, double atV) {
        return (atU - u[i]) * tu[i] + (atV - v[i]) * tv[i];
    }
}
