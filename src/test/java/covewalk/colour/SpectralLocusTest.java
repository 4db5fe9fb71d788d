package covewalk.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpectralLocusTest {

    @ParameterizedTest(name = "{3}")
    @CsvSource(textBlock = """
            # x,    y,      real,  why
            0.3333, 0.3333, true,  the equal-energy white
            0.64,   0.33,   true,  the red of ITU-R BT.709
            0.15,   0.06,   true,  its blue
            0.30,   0.60,   true,  its green
            0.70,   0.295,  true,  just inside the 620 nm (0.6915; 0.3083) to 640 nm (0.7190; 0.2809) edge of CIE 15
            0.70,   0.305,  false, just outside of it
            0.45,   0.14,   true,  just above the purple line
            0.45,   0.125,  false, just below it
            0.05,   0.10,   false, left of the blue edge
            0.72,   0.14,   false, right of the red corner
            0.60,   0.45,   false, beyond yellow: x + y > 1 is refused earlier
            """)
    void tellsRealColours(double x, double y, boolean real, String why) {
        if (x + y > 1) {
            assertFalse(new Uv(4 * x / (3 - 2 * x + 12 * y), 6 * y / (3 - 2 * x + 12 * y)).isReal());
            return;
        }
        assertEquals(real, new Xy(x, y).isReal());
        assertEquals(real, new Xy(x, y).toUvPrime().isReal());
    }

    /** The same polygon tested in x, y, where it is defined, by the winding of angles instead of by counting edges. */
    @Test
    void agreesWithTheWindingNumberInTheXyDiagram() {
        List<Xy> edge = ColourMatching.functions().stream().map(f -> new Xyz(f.x(), f.y(), f.z()).chromaticity()).toList();
        SplittableRandom random = new SplittableRandom(5);
        int real = 0;
        for (int i = 0; i < 20_000; i++) {
            double y = random.nextDouble(1e-6, 0.9);
            Xy point = new Xy(random.nextDouble(0, Math.min(0.8, 1 - y)), y);
            boolean inside = winds(edge, point);
            assertEquals(inside, point.isReal(), point.toString());
            real += inside ? 1 : 0;
        }
        assertTrue(real > 5000 && real < 15_000, "both answers were asked for: " + real);
    }

    private static boolean winds(List<Xy> edge, Xy point) {
        double angle = 0;
        for (int i = 0; i < edge.size(); i++) {
            Xy a = edge.get(i);
            Xy b = edge.get((i + 1) % edge.size());
            double ax = a.x() - point.x();
            double ay = a.y() - point.y();
            double bx = b.x() - point.x();
            double by = b.y() - point.y();
            angle += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
        }
        return Math.abs(angle) > Math.PI;
    }
}
