package covewalk.app.parts;

import covewalk.plot.VerdictMark;
import covewalk.verdict.Difference;
import covewalk.verdict.limit.Verdict;
import covewalk.words.Words;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** The mark of a verdict with its word beside it, as everywhere. */
public final class VerdictView extends HBox {

    private static final double PIXELS_PER_MM = 4;

    /** @param difference as {@link VerdictMark#of} */
    public VerdictView(Verdict verdict, Optional<Difference> difference, Words words) {
        super(8);
        setAlignment(Pos.CENTER_LEFT);
        setFillHeight(false); // the mark stands at the height of its word
        getStyleClass().addAll("verdict", "verdict-" + verdict.code());
        PicturePane mark = new PicturePane(PIXELS_PER_MM);
        mark.show(VerdictMark.of(verdict, difference).picture(words));
        mark.setMinWidth(mark.prefWidth(-1));
        Label word = new Label(words.verdict(verdict));
        word.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(mark, word);
    }
}
