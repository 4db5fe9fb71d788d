package covewalk.plot;

import covewalk.plot.Paint.Ink;
import covewalk.verdict.Difference;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A verdict as two level bars that meet as the two lights do: level and touching where it is within, the second one bar
 * height higher (cooler) or lower (warmer) where it is beyond, open and dotted where it is unsettled, in outline where
 * it was not read. It needs no colour.
 */
public final class VerdictMark {

    private static final double WIDTH = 9;
    private static final double HEIGHT = 4.5;

    private final Verdict verdict;
    private final boolean higher;

    private VerdictMark(Verdict verdict, boolean higher) {
        this.verdict = verdict;
        this.higher = higher;
    }

    /** @param difference from the datum's side to the far side; empty where a side was not read */
    public static VerdictMark of(Verdict verdict, Optional<Difference> difference) {
        boolean cooler = difference.map(d -> d.deltaCctK().orElse(0) >= 0).orElse(true);
        return new VerdictMark(verdict, cooler);
    }

    /** The mark alone, to stand beside its word. */
    public Picture picture(Words words) {
        return new Picture(WIDTH, HEIGHT, words.verdict(verdict), shapes(WIDTH / 2, HEIGHT / 2, WIDTH, HEIGHT / 3, ""));
    }

    /**
     * The mark about a point.
     *
     * @param width of both bars together, mm
     * @param bar height of one bar, mm
     */
    List<Shape> shapes(double x, double y, double width, double bar, String says) {
        double half = width / 2;
        Ink ink = verdict == Verdict.BEYOND ? Ink.STRONG : Ink.WEAK;
        return switch (verdict) {
            case WITHIN -> List.of(bar(x - half, y - bar / 2, width, bar, ink, says));
            case BEYOND -> {
                double first = higher ? y : y - bar;
                yield List.of(bar(x - half, first, half, bar, ink, says),
                        bar(x, higher ? first - bar : first + bar, half, bar, ink, ""));
            }
            case UNSETTLED -> open(x, y, width, bar, ink, says);
            case NOT_READ -> List.of(outline(x - half, y - bar / 2, half, bar, says), outline(x, y - bar / 2, half, bar, ""));
        };
    }

    private static List<Shape> open(double x, double y, double width, double bar, Ink ink, String says) {
        double side = width * 0.3;
        double dot = width * 0.08;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(bar(x - width / 2, y - bar / 2, side, bar, ink, says));
        shapes.add(bar(x + width / 2 - side, y - bar / 2, side, bar, ink, ""));
        for (double at : new double[] {x - 1.5 * dot, x + 0.5 * dot}) {
            shapes.add(bar(at, y - dot / 2, dot, dot, ink, ""));
        }
        return shapes;
    }

    private static Shape bar(double x, double y, double width, double height, Ink ink, String says) {
        return new Shape.Rectangle(x, y, width, height, ink, Ink.NONE, says);
    }

    private static Shape outline(double x, double y, double width, double height, String says) {
        return new Shape.Rectangle(x + 0.15, y, width - 0.3, height, Ink.NONE, Ink.WEAK, says);
    }
}
