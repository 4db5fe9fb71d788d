package covewalk.plot;

import java.util.ArrayList;
import java.util.List;

/** Positions along a cove to x in a picture, and where to put its ticks. */
record Scale(double lengthM, double left, double width) {

    private static final double[] STEPS_M = {0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
    private static final double LEAST_MM = 11;

    double x(double positionM) {
        return left + width * Math.max(0, Math.min(1, positionM / lengthM));
    }

    double right() {
        return left + width;
    }

    /** Round positions far enough apart to be read, from 0 on. */
    List<Double> ticksM() {
        double step = STEPS_M[STEPS_M.length - 1];
        for (int i = STEPS_M.length - 1; i >= 0 && STEPS_M[i] / lengthM * width >= LEAST_MM; i--) {
            step = STEPS_M[i];
        }
        List<Double> ticks = new ArrayList<>();
        for (int i = 0; i * step <= lengthM && i <= 1000; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }
}
