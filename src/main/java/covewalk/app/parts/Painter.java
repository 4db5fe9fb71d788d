package covewalk.app.parts;

import covewalk.plot.Paint.Ink;
import covewalk.plot.Picture;
import covewalk.plot.Shape;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Paints the shapes of a picture on a canvas. */
final class Painter {

    private final GraphicsContext canvas;
    private final Inks inks;
    private final double scale;

    /** @param scale pixels per millimetre */
    Painter(GraphicsContext canvas, Inks inks, double scale) {
        this.canvas = canvas;
        this.inks = inks;
        this.scale = scale;
    }

    void paint(Picture picture) {
        picture.shapes().forEach(this::paint);
    }

    private void paint(Shape shape) {
        if (shape instanceof Shape.Line line) {
            line(line);
        } else if (shape instanceof Shape.Rectangle rectangle) {
            rectangle(rectangle);
        } else if (shape instanceof Shape.Path path) {
            path(path);
        } else if (shape instanceof Shape.Text text) {
            text(text);
        }
    }

    private void line(Shape.Line line) {
        canvas.setStroke(inks.colour(line.paint()));
        canvas.setLineWidth(Math.max(1, line.width() * scale));
        canvas.strokeLine(line.x1() * scale, line.y1() * scale, line.x2() * scale, line.y2() * scale);
    }

    private void rectangle(Shape.Rectangle rectangle) {
        double x = rectangle.x() * scale;
        double y = rectangle.y() * scale;
        canvas.setFill(inks.colour(rectangle.fill()));
        canvas.fillRect(x, y, rectangle.width() * scale, rectangle.height() * scale);
        if (rectangle.outline() != Ink.NONE) {
            canvas.setStroke(inks.colour(rectangle.outline()));
            canvas.setLineWidth(Math.max(1, 0.25 * scale));
            canvas.strokeRect(x, y, rectangle.width() * scale, rectangle.height() * scale);
        }
    }

    private void path(Shape.Path path) {
        Color colour = inks.colour(path.paint());
        double[] xs = path.points().stream().mapToDouble(point -> point.x() * scale).toArray();
        double[] ys = path.points().stream().mapToDouble(point -> point.y() * scale).toArray();
        if (path.closed()) {
            canvas.setFill(colour);
            canvas.fillPolygon(xs, ys, xs.length);
        } else {
            canvas.setStroke(colour);
            canvas.setLineWidth(Math.max(1, path.width() * scale));
            canvas.strokePolyline(xs, ys, xs.length);
        }
    }

    private void text(Shape.Text text) {
        canvas.setFill(inks.colour(text.paint()));
        canvas.setFont(Font.font(Fonts.FAMILY, text.size() * scale));
        canvas.setTextAlign(switch (text.anchor()) {
            case START -> TextAlignment.LEFT;
            case MIDDLE -> TextAlignment.CENTER;
            case END -> TextAlignment.RIGHT;
        });
        canvas.fillText(text.text(), text.x() * scale, text.y() * scale);
    }
}
