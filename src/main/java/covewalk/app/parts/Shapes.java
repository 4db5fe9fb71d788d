package covewalk.app.parts;

import covewalk.plot.Picture;
import covewalk.plot.Shape;
import java.util.List;
import java.util.Optional;

/** Which shape somebody points at. */
final class Shapes {

    /** A finger is no pencil: shapes this near count, mm of the picture (common practice, no source). */
    private static final double NEAR_MM = 2;

    private Shapes() {
    }

    /** The topmost shape there that means something by itself, else the nearest one. */
    static Optional<Shape> at(Picture picture, double x, double y) {
        List<Shape> shapes = picture.shapes();
        Shape nearest = null;
        double least = NEAR_MM;
        for (int i = shapes.size() - 1; i >= 0; i--) {
            double far = shapes.get(i).says().isEmpty() ? Double.MAX_VALUE : distance(shapes.get(i), x, y);
            if (far < least || far == 0 && nearest == null) {
                nearest = shapes.get(i);
                least = far;
            }
        }
        return Optional.ofNullable(nearest);
    }

    private static double distance(Shape shape, double x, double y) {
        if (shape instanceof Shape.Rectangle r) {
            return Math.hypot(outside(x, r.x(), r.x() + r.width()), outside(y, r.y(), r.y() + r.height()));
        }
        if (shape instanceof Shape.Line l) {
            return toSegment(l, x, y);
        }
        if (shape instanceof Shape.Path p && !p.points().isEmpty()) {
            double left = p.points().stream().mapToDouble(Shape.Point::x).min().orElseThrow();
            double right = p.points().stream().mapToDouble(Shape.Point::x).max().orElseThrow();
            double top = p.points().stream().mapToDouble(Shape.Point::y).min().orElseThrow();
            double bottom = p.points().stream().mapToDouble(Shape.Point::y).max().orElseThrow();
            return Math.hypot(outside(x, left, right), outside(y, top, bottom));
        }
        return Double.MAX_VALUE;
    }

    private static double toSegment(Shape.Line l, double x, double y) {
        double dx = l.x2() - l.x1();
        double dy = l.y2() - l.y1();
        double length2 = dx * dx + dy * dy;
        double along = length2 == 0 ? 0 : Math.max(0, Math.min(1, ((x - l.x1()) * dx + (y - l.y1()) * dy) / length2));
        return Math.hypot(x - l.x1() - along * dx, y - l.y1() - along * dy);
    }

    private static double outside(double value, double from, double to) {
        return Math.max(0, Math.max(from - value, value - to));
    }
}
