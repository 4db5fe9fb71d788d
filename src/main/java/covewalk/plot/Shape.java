package covewalk.plot;

import java.util.List;

/**
 * One shape of a picture; all lengths in millimetres, x to the right, y down. {@link #says()} is what it means in
 * words, empty where it means nothing by itself.
 */
public sealed interface Shape {

    String says();

    /** A straight line of some width. */
    record Line(double x1, double y1, double x2, double y2, double width, Paint paint, String says) implements Shape {
    }

    /** A rectangle by its upper left corner, filled, and outlined where {@code outline} is not none. */
    record Rectangle(double x, double y, double width, double height, Paint fill, Paint outline, String says)
            implements Shape {
        public Rectangle {
            if (!(width >= 0 && height >= 0)) {
                throw new IllegalArgumentException("a rectangle of " + width + " by " + height + " mm");
            }
        }
    }

    /** Straight pieces from point to point, closed and filled, or open and drawn with a line of {@code width}. */
    record Path(List<Point> points, boolean closed, double width, Paint paint, String says) implements Shape {
        public Path {
            points = List.copyOf(points);
        }
    }

    /** One line of text whose baseline is at {@code y}. */
    record Text(double x, double y, double size, Anchor anchor, String text, Paint paint) implements Shape {
        @Override
        public String says() {
            return "";
        }
    }

    /** A corner of a path, mm. */
    record Point(double x, double y) {
    }

    /** Which end of a text stands at its x. */
    enum Anchor { START, MIDDLE, END }
}
