package covewalk.plot;

import covewalk.plot.Paint.Ink;
import covewalk.plot.Shape.Point;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;

/** A pointer on a strip, for somebody who walks it. */
public final class HereMark {

    private static final double POINTER_MM = 1.8;
    private static final double POINTER_HEIGHT_MM = 3.2;

    private HereMark() {
    }

    /**
     * The strip with a pointer on its scale and a line through all of it.
     *
     * @param frame in which the strip was drawn
     * @param atM where the next reading is taken, m from the datum
     */
    public static Picture on(Picture strip, StripFrame frame, double atM, Words words) {
        double x = frame.xMm(atM);
        List<Shape> shapes = new ArrayList<>(strip.shapes());
        shapes.add(new Shape.Line(x, 0, x, strip.heightMm() - 1, 0.6, Ink.ACCENT, ""));
        shapes.add(new Shape.Path(List.of(new Point(x - POINTER_MM, 0), new Point(x + POINTER_MM, 0), new Point(x, POINTER_HEIGHT_MM)),
                true, 0, Ink.ACCENT, words.lengths().first(atM)));
        return new Picture(strip.widthMm(), strip.heightMm(), strip.says(), shapes);
    }
}
