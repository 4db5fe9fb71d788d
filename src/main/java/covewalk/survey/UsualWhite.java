package covewalk.survey;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;

/** Which colours a lamp for rooms is likely to have; it decides over warnings only. */
final class UsualWhite {

    /** From candle-like to a cold sky (common practice, no source). */
    static final double LEAST_CCT_K = 1800;
    static final double MOST_CCT_K = 8000;
    /** Nominal whites of ANSI C78.377 stay within some 0.01; twice that still looks white (common practice, no source). */
    static final double MOST_DUV = 0.02;

    private UsualWhite() {
    }

    static boolean holds(ColourTemperature temperature) {
        return temperature instanceof CctDuv found && found.cctK() >= LEAST_CCT_K && found.cctK() <= MOST_CCT_K
                && Math.abs(found.duv()) <= MOST_DUV;
    }

    /** Whether two numbers would be a usual white as x and y. */
    static boolean asXy(double x, double y) {
        return x >= 0 && y > 0 && x + y <= 1 && holds(ColourTemperature.of(new Xy(x, y)));
    }

    /** Whether two numbers would be a usual white as u' and v'. */
    static boolean asUvPrime(double u, double v) {
        return u >= 0 && u <= 1 && v > 0 && v <= 1 && holds(ColourTemperature.of(new UvPrime(u, v)));
    }
}
