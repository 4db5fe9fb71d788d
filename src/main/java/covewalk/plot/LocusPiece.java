package covewalk.plot;

import covewalk.colour.CctDuv;
import covewalk.colour.PlanckianLocus;
import covewalk.colour.UvPrime;
import covewalk.plot.Paint.Ink;
import covewalk.plot.Shape.Anchor;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The Planckian locus as far as a frame shows it, with some temperatures to go by. */
final class LocusPiece {

    private static final double MIRED = 1e6;
    private static final double WARMEST = MIRED / CctDuv.MIN_CCT_K;
    private static final double COOLEST = MIRED / CctDuv.MAX_CCT_K;
    private static final int PIECES = 2000;
    private static final int[] ROUND_K = {25, 50, 100, 200, 500, 1000, 2000, 5000};
    private static final double LEAST_MM = 12;

    private LocusPiece() {
    }

    static List<Shape> of(UvFrame frame, Words words) {
        List<Double> seen = new ArrayList<>();
        for (int i = 0; i <= PIECES; i++) {
            double cctK = MIRED / (COOLEST + (WARMEST - COOLEST) * i / PIECES);
            if (frame.holds(at(cctK))) {
                seen.add(Math.min(Math.max(cctK, CctDuv.MIN_CCT_K), CctDuv.MAX_CCT_K));
            }
        }
        List<Shape> shapes = new ArrayList<>();
        if (seen.size() > 1) {
            shapes.add(new Shape.Path(seen.stream().map(cctK -> frame.point(at(cctK))).toList(), false, 0.35, Ink.WEAK, ""));
            temperatures(frame, words, seen, shapes);
        }
        return shapes;
    }

    private static void temperatures(UvFrame frame, Words words, List<Double> seen, List<Shape> shapes) {
        double coolest = seen.get(0);
        double warmest = seen.get(seen.size() - 1);
        int step = step(frame, at(coolest), at(warmest), coolest - warmest);
        for (int cctK = (int) Math.ceil(warmest / step) * step; cctK <= coolest; cctK += step) {
            Shape.Point point = frame.point(at(cctK));
            shapes.add(new Shape.Line(point.x() - 0.5, point.y() - 0.9, point.x() + 0.5, point.y() + 0.9, 0.3, Ink.WEAK, ""));
            shapes.add(new Shape.Text(point.x() - 0.8, point.y() - 1.4, 2.2, Anchor.END,
                    words.numbers().fixed(cctK, 0) + " K", Ink.WEAK));
        }
    }

    private static int step(UvFrame frame, UvPrime from, UvPrime to, double kelvin) {
        double mm = Math.hypot(frame.x(to.u()) - frame.x(from.u()), frame.y(to.v()) - frame.y(from.v()));
        for (int step : ROUND_K) {
            if (step / kelvin * mm >= LEAST_MM) {
                return step;
            }
        }
        return ROUND_K[ROUND_K.length - 1];
    }

    private static UvPrime at(double cctK) {
        return PlanckianLocus.at(Math.min(Math.max(cctK, CctDuv.MIN_CCT_K), CctDuv.MAX_CCT_K)).toUvPrime();
    }
}
