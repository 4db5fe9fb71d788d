package covewalk.colour;

import java.util.List;

/** The edge of real colours: the chromaticities of single wavelengths, closed by the straight purple line. */
final class SpectralLocus {

    private static final double[] U;
    private static final double[] V;

    static {
        List<ColourMatching> functions = ColourMatching.functions();
        U = functions.stream().mapToDouble(f -> 4 * f.x() / (f.x() + 15 * f.y() + 3 * f.z())).toArray();
        V = functions.stream().mapToDouble(f -> 6 * f.y() / (f.x() + 15 * f.y() + 3 * f.z())).toArray();
    }

    private SpectralLocus() {
    }

    /**
     * Whether the point of the CIE 1960 diagram lies inside. The test may be made in any of the diagrams: straight lines
     * stay straight between them.
     */
    static boolean holds(double u, double v) {
        boolean inside = false;
        for (int i = 0, before = U.length - 1; i < U.length; before = i++) {
            boolean crosses = V[i] > v != V[before] > v;
            if (crosses && u < U[i] + (v - V[i]) / (V[before] - V[i]) * (U[before] - U[i])) {
                inside = !inside;
            }
        }
        return inside;
    }
}
