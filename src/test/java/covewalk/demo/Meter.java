package covewalk.demo;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.UvPrime;
import covewalk.colour.Xy;
import java.util.Locale;
import java.util.Random;

/** The meter of the demonstration: adds noise to a true colour and shows it with as many digits as meters have. */
final class Meter {

    /** Standard deviation of u' and of v' when the head is lifted and put back, as survey.json declares it. */
    static final double REPEATABILITY_UV = 0.0003;

    /** That of u' and of v' from place to place along one good reel, in steps (common practice, no source). */
    private static final double ALONG_A_REEL_STEPS = 0.15;

    private static final double LUX_SHARE = 0.006;

    private final Random noise;

    Meter(Random noise) {
        this.noise = noise;
    }

    /** What the strip happens to be at one place, however often it is read. */
    Offset scatterOfAPlace() {
        return new Offset(ALONG_A_REEL_STEPS * noise.nextGaussian(), ALONG_A_REEL_STEPS * noise.nextGaussian());
    }

    UvPrime read(Offset colour) {
        double du = REPEATABILITY_UV * noise.nextGaussian();
        double dv = REPEATABILITY_UV * noise.nextGaussian();
        return colour.toUvPrime().plus(du, dv);
    }

    /** Lux to 1 lx. */
    String lux(double lux) {
        return String.format(Locale.ROOT, "%.0f", lux * (1 + LUX_SHARE * noise.nextGaussian()));
    }

    /** x and y to four decimals, in the cells of a log. */
    static String xy(UvPrime colour) {
        Xy xy = colour.toXy();
        return String.format(Locale.ROOT, ",,%.4f,%.4f", xy.x(), xy.y());
    }

    /** CCT to 1 K and Duv to four decimals, in the cells of a log. */
    static String cctDuv(UvPrime colour) {
        CctDuv white = (CctDuv) ColourTemperature.of(colour);
        double duv = Math.rint(white.duv() * 1e4) / 1e4 + 0.0; // shows no -0.0000
        return String.format(Locale.ROOT, "%.0f,%.4f,,", white.cctK(), duv);
    }
}
