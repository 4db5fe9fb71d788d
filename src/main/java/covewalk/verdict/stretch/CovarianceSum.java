package covewalk.verdict.stretch;

import covewalk.colour.Covariance;

/** A covariance being added up, station by station: a large survey would else make an object at every step of a sum. */
final class CovarianceSum {

    private double uu;
    private double uv;
    private double vv;

    void add(Covariance covariance, double factor) {
        add(covariance.uu() * factor, covariance.uv() * factor, covariance.vv() * factor);
    }

    void add(double moreUu, double moreUv, double moreVv) {
        uu += moreUu;
        uv += moreUv;
        vv += moreVv;
    }

    Covariance times(double factor) {
        return new Covariance(uu * factor, uv * factor, vv * factor);
    }
}
