package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import java.util.List;

/**
 * What one colour, or one straight line, leaves unexplained of any run of stations: the weighted sum of squares about
 * it, in units of the noise, from running sums, so that each run costs the same however long it is. The colours are
 * first turned and stretched so that the noise is the same in every direction.
 */
final class SegmentCosts {

    private final double[] w;
    private final double[] wx;
    private final double[] wxx;
    private final double[] wa;
    private final double[] wb;
    private final double[] wxa;
    private final double[] wxb;
    private final double[] wc;

    SegmentCosts(List<Station> row, Noise noise) {
        int n = row.size();
        w = new double[n + 1];
        wx = new double[n + 1];
        wxx = new double[n + 1];
        wa = new double[n + 1];
        wb = new double[n + 1];
        wxa = new double[n + 1];
        wxb = new double[n + 1];
        wc = new double[n + 1];
        Whitening whitening = Whitening.of(noise.ofOneReading().plus(Whitening.LEAST));
        Station origin = row.get(n / 2); // sums about a point among the data lose no digits
        for (int i = 0; i < n; i++) {
            Station station = row.get(i);
            double du = station.mean().u() - origin.mean().u();
            double dv = station.mean().v() - origin.mean().v();
            Covariance own = noise.wholeOf(station);
            add(i, 1 / whitening.meanVariance(own.plus(Whitening.LEAST)), station.positionM() - origin.positionM(),
                    whitening.first(du, dv), whitening.second(du, dv));
        }
    }

    private void add(int i, double weight, double x, double a, double b) {
        w[i + 1] = w[i] + weight;
        wx[i + 1] = wx[i] + weight * x;
        wxx[i + 1] = wxx[i] + weight * x * x;
        wa[i + 1] = wa[i] + weight * a;
        wb[i + 1] = wb[i] + weight * b;
        wxa[i + 1] = wxa[i] + weight * x * a;
        wxb[i + 1] = wxb[i] + weight * x * b;
        wc[i + 1] = wc[i] + weight * (a * a + b * b);
    }

    /** About one colour, for the stations from {@code from} up to but not including {@code to}. */
    double level(int from, int to) {
        double sum = w[to] - w[from];
        double a = wa[to] - wa[from];
        double b = wb[to] - wb[from];
        return Math.max(0, wc[to] - wc[from] - (a * a + b * b) / sum);
    }

    /** About a straight line; the same as {@link #level} where all stations lie at one position. */
    double line(int from, int to) {
        double sum = w[to] - w[from];
        double x = wx[to] - wx[from];
        double spread = wxx[to] - wxx[from] - x * x / sum;
        if (!(spread > 1e-12)) {
            return level(from, to);
        }
        double a = wxa[to] - wxa[from] - x * (wa[to] - wa[from]) / sum;
        double b = wxb[to] - wxb[from] - x * (wb[to] - wb[from]) / sum;
        return Math.max(0, level(from, to) - (a * a + b * b) / spread);
    }
}
