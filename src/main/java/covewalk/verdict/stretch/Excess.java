package covewalk.verdict.stretch;

import covewalk.colour.Covariance;

/** What one covariance has over another, with directions in which it has less counted as none. */
final class Excess {

    private Excess() {
    }

    static Covariance over(Covariance found, Covariance expected) {
        double uu = found.uu() - expected.uu();
        double uv = found.uv() - expected.uv();
        double vv = found.vv() - expected.vv();
        double mean = (uu + vv) / 2;
        double radius = Math.hypot((uu - vv) / 2, uv);
        double larger = Math.max(0, mean + radius);
        double smaller = Math.max(0, mean - radius);
        double angle = Math.atan2(2 * uv, uu - vv) / 2;
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Covariance(larger * cos * cos + smaller * sin * sin, (larger - smaller) * cos * sin,
                larger * sin * sin + smaller * cos * cos);
    }
}
