package covewalk.plot;

import covewalk.colour.UvPrime;
import covewalk.colour.Xy;

/**
 * Colours with their differences from a mean made larger, so that print and screen can show them: the mean becomes the
 * screen's white. What it shows is a difference, never the colour of the light.
 */
final class Amplified {

    /** The white of sRGB, D65 (IEC 61966-2-1; from memory). */
    private static final UvPrime WHITE = new Xy(0.3127, 0.3290).toUvPrime();
    /** How far from white the farthest colour goes: light enough for black print on it. */
    private static final double REACH = 0.03;
    private static final double LUMINANCE = 0.7;
    /** On a dark screen: what is light there would light the ceiling (common practice, no source). */
    private static final double DARK_LUMINANCE = 0.22;
    private static final int[] TIMES = {40, 30, 20, 15, 12, 10, 8, 6, 5, 4, 3, 2, 1};

    private final UvPrime mean;
    private final int times;
    private final double luminance;

    Amplified(UvPrime mean, double farthest) {
        this(mean, timesFor(farthest), LUMINANCE);
    }

    private Amplified(UvPrime mean, int times, double luminance) {
        this.mean = mean;
        this.times = times;
        this.luminance = luminance;
    }

    /**
     * @param times how many times larger; 0 for as many as the cove's colours allow
     * @param dark whether it is for a dark screen
     */
    static Amplified of(CoveMean mean, int times, boolean dark) {
        return new Amplified(mean.colour(), times > 0 ? times : timesFor(mean.farthest()), dark ? DARK_LUMINANCE : LUMINANCE);
    }

    int times() {
        return times;
    }

    Paint.Rgb paint(UvPrime colour) {
        double u = WHITE.u() + clipped(times * (colour.u() - mean.u()));
        double v = WHITE.v() + clipped(times * (colour.v() - mean.v()));
        return screen(new UvPrime(u, v).toXy());
    }

    private static int timesFor(double farthest) {
        for (int times : TIMES) {
            if (times * farthest <= REACH) {
                return times;
            }
        }
        return 1;
    }

    private static double clipped(double difference) {
        return Math.max(-2 * REACH, Math.min(2 * REACH, difference));
    }

    /** From x, y at a fixed luminance to sRGB (matrix and curve of IEC 61966-2-1; from memory). */
    private Paint.Rgb screen(Xy xy) {
        double x = xy.x() / xy.y() * luminance;
        double y = luminance;
        double z = (1 - xy.x() - xy.y()) / xy.y() * luminance;
        return new Paint.Rgb(level(3.2406 * x - 1.5372 * y - 0.4986 * z), level(-0.9689 * x + 1.8758 * y + 0.0415 * z),
                level(0.0557 * x - 0.2040 * y + 1.0570 * z));
    }

    private static int level(double linear) {
        double c = Math.max(0, Math.min(1, linear));
        return (int) Math.round(255 * (c <= 0.0031308 ? 12.92 * c : 1.055 * Math.pow(c, 1 / 2.4) - 0.055));
    }
}
