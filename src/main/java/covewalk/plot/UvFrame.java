package covewalk.plot;

import covewalk.colour.UvPrime;
import java.util.ArrayList;
import java.util.List;

/**
 * The part of the u', v' diagram that a picture shows, both axes to one scale, and where it lies on the paper (mm).
 *
 * @param left u' at the left edge
 * @param bottom v' at the lower edge
 * @param mmPerUnit mm of paper per 1 of u' or v'
 */
record UvFrame(double left, double bottom, double mmPerUnit) {

    static final double X = 13;
    static final double Y = 3;
    static final double WIDTH = 72;
    static final double HEIGHT = 58;

    private static final double[] STEPS = {0.0002, 0.0005, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1};
    private static final double LEAST_MM = 9;
    private static final double MARGIN = 1.12;

    /** Around all of these, with a little room; there is at least one. */
    static UvFrame around(List<UvPrime> colours) {
        double u1 = colours.stream().mapToDouble(UvPrime::u).min().orElseThrow();
        double u2 = colours.stream().mapToDouble(UvPrime::u).max().orElseThrow();
        double v1 = colours.stream().mapToDouble(UvPrime::v).min().orElseThrow();
        double v2 = colours.stream().mapToDouble(UvPrime::v).max().orElseThrow();
        double perMm = Math.max(Math.max((u2 - u1) / WIDTH, (v2 - v1) / HEIGHT) * MARGIN, UvPrime.STEP / WIDTH);
        return new UvFrame((u1 + u2 - WIDTH * perMm) / 2, (v1 + v2 - HEIGHT * perMm) / 2, 1 / perMm);
    }

    double x(double u) {
        return X + (u - left) * mmPerUnit;
    }

    double y(double v) {
        return Y + HEIGHT - (v - bottom) * mmPerUnit;
    }

    Shape.Point point(UvPrime colour) {
        return new Shape.Point(x(colour.u()), y(colour.v()));
    }

    boolean holds(UvPrime colour) {
        double x = x(colour.u());
        double y = y(colour.v());
        return x >= X && x <= X + WIDTH && y >= Y && y <= Y + HEIGHT;
    }

    List<Double> ticksU() {
        return ticks(left, WIDTH);
    }

    List<Double> ticksV() {
        return ticks(bottom, HEIGHT);
    }

    /** Decimals that tell its ticks apart. */
    int decimals() {
        return step() < 0.001 ? 4 : 3;
    }

    private List<Double> ticks(double from, double lengthMm) {
        double step = step();
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step); i * step <= from + lengthMm / mmPerUnit; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    private double step() {
        for (double step : STEPS) {
            if (step * mmPerUnit >= LEAST_MM) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }
}
