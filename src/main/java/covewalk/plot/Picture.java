package covewalk.plot;

import java.util.List;

/**
 * A picture, painted in the order of its shapes.
 *
 * @param widthMm its width, mm
 * @param heightMm its height, mm
 * @param says the whole of it in words, for who cannot see it
 */
public record Picture(double widthMm, double heightMm, String says, List<Shape> shapes) {

    public Picture {
        shapes = List.copyOf(shapes);
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("a picture of " + widthMm + " by " + heightMm + " mm");
        }
    }
}
