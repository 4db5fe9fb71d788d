package covewalk.plot;

import java.util.ArrayList;
import java.util.List;

/** Positions along a cove, or a piece of it, to x in a picture, and where to put its ticks. */
record Scale(double fromM, double toM, double left, double width) {

    private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000};
    private static final double LEAST_MM = 11;
    private static final double M_PER_FOOT = 0.3048; // exact, by the international yard of 1959

    /**
     * A place on the scale.
     *
     * @param label its position, in the unit asked for
     */
    record Tick(double atM, double label) {
    }

    /** A whole cove. */
    Scale(double lengthM, double left, double width) {
        this(0, lengthM, left, width);
    }

    double x(double positionM) {
        return left + width * Math.max(0, Math.min(1, (positionM - fromM) / (toM - fromM)));
    }

    double right() {
        return left + width;
    }

    boolean shows(double positionM) {
        return positionM >= fromM && positionM <= toM;
    }

    /** Whether any of it is shown. */
    boolean shows(double from, double to) {
        return to >= fromM && from <= toM;
    }

    /** Round positions far enough apart to be read. */
    List<Tick> ticks(boolean feet) {
        double unit = feet ? M_PER_FOOT : 1;
        double step = step(unit);
        List<Tick> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(fromM / unit / step - 1e-9); i * step * unit <= toM + 1e-9 && ticks.size() <= 1000; i++) {
            ticks.add(new Tick(i * step * unit, i * step));
        }
        return ticks;
    }

    private double step(double unit) {
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0 && STEPS[i] * unit / (toM - fromM) * width >= LEAST_MM; i--) {
            step = STEPS[i];
        }
        return step;
    }
}
