package covewalk.verdict.limit;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.numbers.gamma.ErfDifference;
import org.apache.commons.numbers.gamma.Erfc;

/**
 * The chance that a two-dimensional normal point falls into a disc about the origin, by integration along the axis of
 * the larger standard deviation. Where both are equal this is the Rice distribution function (a non-central
 * chi-square with two degrees of freedom).
 */
final class DiscProbability {

    /** Farther out than this many standard deviations lies less than 2e-15 of a normal distribution. */
    private static final double FAR = 8;

    /** Standard deviations that one panel of the integration spans: half as wide ones change nothing over 2e-14. */
    private static final double PANEL = 3;

    private static final GaussIntegrator NODES = new GaussIntegratorFactory().legendre(16);

    private DiscProbability() {
    }

    /**
     * @param mean1 the point's mean along the first principal axis
     * @param mean2 and along the second
     * @param sd1 standard deviation along the first principal axis, above 0
     * @param sd2 and along the second, above 0
     * @param radius of the disc, 0 or more
     */
    static double of(double mean1, double mean2, double sd1, double sd2, double radius) {
        double distance = Math.hypot(mean1, mean2);
        double widest = Math.max(sd1, sd2);
        if (distance - radius > FAR * widest) {
            return 0;
        }
        if (radius - distance > FAR * widest) {
            return 1;
        }
        return sd1 >= sd2 ? along(mean1, mean2, sd1, sd2, radius) : along(mean2, mean1, sd2, sd1, radius);
    }

    /** With x = radius sin(angle), which takes the root out of the disc's edge. */
    private static double along(double mean1, double mean2, double sd1, double sd2, double radius) {
        double from = Math.max(-radius, mean1 - FAR * sd1);
        double to = Math.min(radius, mean1 + FAR * sd1);
        if (!(to > from)) {
            return 0;
        }
        double start = Math.asin(from / radius);
        double end = Math.asin(to / radius);
        int panels = (int) Math.ceil((to - from) / (PANEL * sd2)) + 1;
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            double low = start + (end - start) * i / panels;
            double high = start + (end - start) * (i + 1) / panels;
            sum += panel(low, high, mean1, mean2, sd1, sd2, radius);
        }
        return Math.min(1, Math.max(0, sum));
    }

    private static double panel(double low, double high, double mean1, double mean2, double sd1, double sd2,
                                double radius) {
        double half = (high - low) / 2;
        double middle = (high + low) / 2;
        double sum = 0;
        for (int k = 0; k < NODES.getNumberOfPoints(); k++) {
            double angle = middle + half * NODES.getPoint(k);
            double chord = radius * Math.cos(angle);
            double z = (radius * Math.sin(angle) - mean1) / sd1;
            double density = Math.exp(-z * z / 2) / (sd1 * Math.sqrt(2 * Math.PI));
            sum += NODES.getWeight(k) * chord * density * between((-chord - mean2) / sd2, (chord - mean2) / sd2);
        }
        return sum * half;
    }

    /** Of a normal number; mostly one end of the chord is too far out to count, and one function is asked, not two. */
    private static double between(double low, double high) {
        if (low < -FAR) {
            return below(high);
        }
        if (high > FAR) {
            return below(-low);
        }
        return ErfDifference.value(low / Math.sqrt(2), high / Math.sqrt(2)) / 2;
    }

    private static double below(double sds) {
        return sds > FAR ? 1 : sds < -FAR ? 0 : Erfc.value(-sds / Math.sqrt(2)) / 2;
    }
}
