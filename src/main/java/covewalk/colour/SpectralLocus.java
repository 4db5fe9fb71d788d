package covewalk.colour;

import java.util.Arrays;

/**
 * The edge of real colours: the chromaticities of single wavelengths, 1 nm apart, closed by the straight purple line.
 * Kept in the CIE 1960 diagram; the test may be made in any of the diagrams, as straight lines stay straight between
 * them.
 */
final class SpectralLocus {

    /** u and v for each nanometre from 360 to 830. */
    static final String FILE = "spectral-locus.bin";

    /** The edge for the CIE 1931 2 degree observer. */
    static final SpectralLocus CIE_1931 = new SpectralLocus();

    /** Columns of equal width that the diagram is cut into from u = 0; all colours have u below 0.64. */
    private static final int COLUMNS = 256;
    private static final double PER_U = COLUMNS / 0.64;

    /** The upper edge is nowhere lower than 0.337, at the red end. */
    private static final double LOWEST_CEILING = 0.3;

    private final double[] u;
    private final double[] v;

    /** Above this v in a column and below that one, no edge is near: nearly every colour is settled by these two. */
    private final double[] floor = new double[COLUMNS];
    private final double[] ceiling = new double[COLUMNS];

    private SpectralLocus() {
        double[] points = StoredNumbers.read(FILE);
        u = new double[points.length / 2];
        v = new double[points.length / 2];
        for (int i = 0; i < u.length; i++) {
            u[i] = points[2 * i];
            v[i] = points[2 * i + 1];
        }
        Arrays.fill(ceiling, 1);
        for (int i = 0; i < u.length; i++) {
            bound(i, (i + 1) % u.length);
        }
        for (int column = 0; column < COLUMNS; column++) {
            if (floor[column] == 0) {
                ceiling[column] = 0; // no edge: a column without colours
            }
        }
    }

    /** Whether the point lies inside. */
    boolean holds(double atU, double atV) {
        int column = (int) (atU * PER_U);
        if (column < 0 || column >= COLUMNS) {
            return false;
        }
        return atV > floor[column] && atV < ceiling[column] || isInside(atU, atV);
    }

    /** Counts the edges met on the way out, along v = const. */
    private boolean isInside(double atU, double atV) {
        boolean inside = false;
        for (int i = 0, before = u.length - 1; i < u.length; before = i++) {
            boolean crosses = v[i] > atV != v[before] > atV;
            if (crosses && atU < u[i] + (atV - v[i]) / (v[before] - v[i]) * (u[before] - u[i])) {
                inside = !inside;
            }
        }
        return inside;
    }

    /**
     * With growing wavelength the edge runs to smaller u below and to larger u above. (At the violet end it goes back
     * and forth in the fifth decimal, so that direction alone does not tell.)
     */
    private void bound(int from, int to) {
        int left = u[from] < u[to] ? from : to;
        int right = left == from ? to : from;
        for (int column = (int) (u[left] * PER_U); column <= (int) (u[right] * PER_U); column++) {
            double atLeft = along(left, right, Math.max(u[left], column / PER_U));
            double atRight = along(left, right, Math.min(u[right], (column + 1) / PER_U));
            if (left == to || v[from] < LOWEST_CEILING) {
                floor[column] = Math.max(floor[column], Math.max(atLeft, atRight));
            } else {
                ceiling[column] = Math.min(ceiling[column], Math.min(atLeft, atRight));
            }
        }
    }

    private double along(int left, int right, double atU) {
        double width = u[right] - u[left];
        return width == 0 ? v[left] : v[left] + (v[right] - v[left]) * (atU - u[left]) / width;
    }
}
