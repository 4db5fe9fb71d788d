package covewalk.colour;

import java.util.Locale;

/**
 * Prints the largest error of each way to CCT and Duv, over a fixed sample of real colours from 1700 to 20000 K whose
 * CCT and Duv are given and whose u, v come from the sums of the definition.
 */
public final class ColourErrors {

    private static final int N = 20_000;

    /** A way from u, v to CCT and Duv. */
    private interface Method {
        CctDuv of(double u, double v);
    }

    private ColourErrors() {
    }

    /** Takes no arguments. */
    public static void main(String[] args) {
        System.out.printf(Locale.ROOT, "%-10s %-14s %12s %12s %12s%n", "|Duv| to", "method", "CCT, K", "CCT, rel.", "Duv");
        for (double maxDuv : new double[] {0.02, 0.05}) {
            print(maxDuv, "ours", (u, v) -> (CctDuv) ColourTemperature.of(new Uv(u, v)));
            print(maxDuv, "Ohno 2014", new Ohno()::cctDuv);
            print(maxDuv, "Robertson 1968", new Robertson()::cctDuv);
        }
    }

    private static void print(double maxDuv, String name, Method method) {
        ExactSearch exact = new ExactSearch();
        double kelvin = 0;
        double relative = 0;
        double duv = 0;
        for (CctDuv pair : Sample.pairs(N, 1700, 20_000, maxDuv)) {
            Uv uv = exact.toUv(1e6 / pair.cctK(), pair.duv());
            CctDuv found = method.of(uv.u(), uv.v());
            double error = Math.abs(found.cctK() - pair.cctK());
            kelvin = Math.max(kelvin, error);
            relative = Math.max(relative, error / pair.cctK());
            duv = Math.max(duv, Math.abs(found.duv() - pair.duv()));
        }
        System.out.printf(Locale.ROOT, "%-10s %-14s %12.2g %12.1e %12.1e%n", maxDuv, name, kelvin, relative, duv);
    }
}
