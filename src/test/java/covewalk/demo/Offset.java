package covewalk.demo;

import covewalk.colour.CctDuv;
import covewalk.colour.Jacobian;
import covewalk.colour.UvPrime;

/**
 * A colour as people in the trade speak of it: so many steps of 0.0011 in u'v' from a black body of 2700 K.
 *
 * @param along steps along the Planckian locus, + towards warmer
 * @param across steps across it, + towards greener
 */
record Offset(double along, double across) {

    static final Offset NONE = new Offset(0, 0);

    private static final CctDuv BASE = new CctDuv(2700, 0);

    Offset plus(Offset other) {
        return new Offset(along + other.along, across + other.across);
    }

    Offset times(double factor) {
        return new Offset(along * factor, across * factor);
    }

    double steps() {
        return Math.hypot(along, across);
    }

    /** At right angles in u'v', so that two offsets lie as many steps apart as Pythagoras says. */
    UvPrime toUvPrime() {
        Jacobian perKelvin = BASE.jacobianToUvPrime();
        double warmerU = perKelvin.first(-1, 0);
        double warmerV = perKelvin.second(-1, 0);
        double step = UvPrime.STEP / Math.hypot(warmerU, warmerV);
        return BASE.toUvPrime().plus((along * warmerU - across * warmerV) * step, (along * warmerV + across * warmerU) * step);
    }
}
