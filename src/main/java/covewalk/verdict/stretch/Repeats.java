package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.Reading;
import java.util.Collection;

/**
 * Readings taken again at one place, about the mean of their place, pooled over all places (GUM H.5 pools daily readings
 * alike).
 *
 * @param sums of squares and products in u', v'
 * @param count readings less stations
 * @param digits what the digits typed add to the squares of u' and v' together, as far as rounding varies
 */
public record Repeats(Covariance sums, int count, double digits) {

    static final Repeats NONE = new Repeats(Covariance.ZERO, 0, 0);

    static Repeats of(Collection<Station> stations) {
        double uu = 0;
        double uv = 0;
        double vv = 0;
        int count = 0;
        double digits = 0;
        for (Station station : stations) {
            int repeats = station.readings().size() - 1;
            if (repeats > 0) {
                for (Reading reading : station.readings()) {
                    UvPrime colour = station.colours().of(reading);
                    double du = colour.u() - station.mean().u();
                    double dv = colour.v() - station.mean().v();
                    uu += du * du;
                    uv += du * dv;
                    vv += dv * dv;
                }
                count += repeats;
                digits += repeats * (station.digits().uu() + station.digits().vv());
            }
        }
        return new Repeats(new Covariance(uu, uv, vv), count, digits);
    }

    /** Those of other places with them. */
    Repeats plus(Repeats other) {
        return new Repeats(sums.plus(other.sums), count + other.count, digits + other.digits);
    }

    /** Squares of u' and of v' together. */
    double squares() {
        return sums.uu() + sums.vv();
    }

    /** Of one reading. */
    Covariance covariance() {
        return sums.times(1.0 / count);
    }

    /** Pooled standard deviation of u' and v' each; NaN where nothing was repeated. */
    public double uv() {
        return Math.sqrt(squares() / (2 * count));
    }
}
