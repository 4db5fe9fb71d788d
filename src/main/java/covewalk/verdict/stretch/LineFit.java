package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import java.util.List;

/** Fits one colour, or a straight line, to the stations of a stretch by weighted least squares. */
final class LineFit {

    /** With one there is nothing to tell a slope by. */
    private static final int FEWEST_FOR_A_SLOPE = 2;

    private final List<Station> stations;
    private final Noise noise;
    private final Parts[] parts;
    private final double[] weights;
    private final double weightSum;

    LineFit(List<Station> stations, Noise noise) {
        this.stations = stations;
        this.noise = noise;
        this.parts = new Parts[stations.size()];
        this.weights = new double[stations.size()];
        double sum = 0;
        for (int i = 0; i < parts.length; i++) {
            parts[i] = noise.of(stations.get(i));
            weights[i] = weight(parts[i].meanVariance());
            sum += weights[i];
        }
        this.weightSum = sum;
    }

    /** Whether there is a line through them. */
    static boolean slopes(List<Station> stations) {
        return stations.size() >= FEWEST_FOR_A_SLOPE;
    }

    /** One colour for all of them. */
    Line level() {
        return new Line(centreM(), centre(), centreParts(), 0, 0, Parts.NONE, common());
    }

    /** A straight line along the positions, of which there must be two or more. */
    Line sloping() {
        double centreM = centreM();
        UvPrime centre = centre();
        double spread = 0;
        double u = 0;
        double v = 0;
        PartsSum slope = new PartsSum();
        for (int i = 0; i < weights.length; i++) {
            Station station = stations.get(i);
            double pull = weights[i] * (station.positionM() - centreM);
            spread += pull * (station.positionM() - centreM);
            u += pull * (station.mean().u() - centre.u());
            v += pull * (station.mean().v() - centre.v());
            slope.add(parts[i], pull * pull);
        }
        return new Line(centreM, centre, centreParts(), u / spread, v / spread,
                slope.times(1 / (spread * spread)), common());
    }

    private double centreM() {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * stations.get(i).positionM();
        }
        return sum / weightSum;
    }

    private UvPrime centre() {
        double u = 0;
        double v = 0;
        for (int i = 0; i < weights.length; i++) {
            u += weights[i] * stations.get(i).mean().u();
            v += weights[i] * stations.get(i).mean().v();
        }
        return new UvPrime(u / weightSum, v / weightSum);
    }

    private Parts centreParts() {
        PartsSum sum = new PartsSum();
        for (int i = 0; i < weights.length; i++) {
            sum.add(parts[i], weights[i] * weights[i]);
        }
        return sum.times(1 / (weightSum * weightSum));
    }

    /** Coarse digits shift all readings of a stretch alike: the mean over its stations, not divided by their number. */
    private Covariance common() {
        CovarianceSum sum = new CovarianceSum();
        for (Station station : stations) {
            sum.add(noise.stayingInTheMean(station.digits()), 1);
        }
        return sum.times(1.0 / stations.size());
    }

    private static double weight(double variance) {
        return variance > 0 ? 1 / variance : 1;
    }
}
