package covewalk.plot;

import covewalk.plot.Paint.Ink;
import covewalk.verdict.CoveJudgement;
import covewalk.verdict.stretch.Stretch;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;

/** The amplified colours of a cove's stretches in one band, and the caption that says how much they are amplified. */
final class ColourBand {

    /** Pieces in which a steady drift is drawn. */
    private static final int SLICES = 24;

    private ColourBand() {
    }

    static List<Shape> of(CoveJudgement cove, Words words, StripFrame frame, double y, double height) {
        List<Shape> shapes = new ArrayList<>();
        Scale scale = frame.scale();
        CoveMean mean = new CoveMean(cove);
        if (!mean.stretches().isEmpty()) {
            Amplified amplified = Amplified.of(mean, frame.times(), frame.dark());
            for (Stretch stretch : mean.stretches()) {
                if (scale.shows(stretch.fromM(), stretch.toM())) {
                    slices(stretch, amplified, scale, y, height, shapes);
                }
            }
            if (!frame.low()) {
                shapes.add(new Shape.Text(scale.right(), 3, 2.6, Shape.Anchor.END,
                        words.count("strip.larger", amplified.times()), Ink.WEAK));
            }
        }
        shapes.add(new Shape.Rectangle(scale.left(), y, scale.width(), height, Ink.NONE, Ink.FAINT, ""));
        return shapes;
    }

    private static void slices(Stretch stretch, Amplified amplified, Scale scale, double y, double height,
                               List<Shape> shapes) {
        int slices = stretch.line().drifts() ? SLICES : 1;
        double each = (stretch.toM() - stretch.fromM()) / slices;
        for (int i = 0; i < slices; i++) {
            double from = stretch.fromM() + i * each;
            Paint paint = amplified.paint(stretch.line().at(from + each / 2));
            shapes.add(new Shape.Rectangle(scale.x(from), y, scale.x(from + each) - scale.x(from), height, paint, Ink.NONE, ""));
        }
    }
}
