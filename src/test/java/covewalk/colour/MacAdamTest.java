package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How far the circle of one step in u'v' stands in for the ellipses that MacAdam observed in 1942: it is a makeshift, and
 * these are its figures. Each semi-axis of each of the 25 ellipses, measured in steps, would be 1 if it were exact.
 */
class MacAdamTest {

    private final List<double[]> ellipses = PrintedTable.rows("macadam-1942.csv", row -> new double[] {
        row.number(0), row.number(1), row.number(2) / 1000, row.number(3) / 1000, Math.toRadians(row.number(4))});

    @Test
    void measuresTheObservedEllipsesBetweenHalfAStepAndThree() {
        List<Double> axes = new ArrayList<>();
        for (double[] e : ellipses) {
            axes.add(steps(e, e[2], e[4]));
            axes.add(steps(e, e[3], e[4] + Math.PI / 2));
        }
        axes.sort(null);
        assertEquals(50, axes.size());
        assertEquals(0.527, axes.get(0), 5e-4, "the least: across the ellipse at x 0.278, y 0.223");
        assertEquals(1.37, axes.get(25), 5e-3, "the median");
        assertEquals(3.04, axes.get(49), 5e-3, "the most: along the ellipse at x 0.365, y 0.153");
    }

    @Test
    void measuresTheWhiteOnesBetweenTwoThirdsOfAStepAndOneAndAHalf() {
        for (double[] e : ellipses) {
            if (ColourTemperature.of(new Xy(e[0], e[1])) instanceof CctDuv white && Math.abs(white.duv()) < 0.01) {
                double along = steps(e, e[2], e[4]);
                double across = steps(e, e[3], e[4] + Math.PI / 2);
                assertTrue(across > 0.65 && across < 1.1 && along > 1.1 && along < 1.6, white + ": " + along + ", " + across);
            }
        }
    }

    private static double steps(double[] e, double length, double angle) {
        double dx = length * Math.cos(angle);
        double dy = length * Math.sin(angle);
        return new Xy(e[0] - dx, e[1] - dy).toUvPrime().stepsTo(new Xy(e[0] + dx, e[1] + dy).toUvPrime()) / 2;
    }
}
