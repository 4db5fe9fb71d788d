package covewalk.app.walk;

import covewalk.app.desk.Desk;
import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import covewalk.plot.LowStrip;
import covewalk.survey.Reading;
import covewalk.verdict.CoveJudgement;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.layout.StackPane;

/** The strip of the cove that is walked, as wide as there is room for. */
final class StripPane extends StackPane {

    /** How many pixels a millimetre of the picture is, to a pixel of the text's size. */
    private static final double MM_PER_TEXT = 0.29;

    private final WalkModel model;
    private final Desk desk;
    private final Texts texts;
    private final PicturePane strip = new PicturePane();
    private final InvalidationListener onChange = observable -> draw();

    StripPane(WalkModel model, Desk desk, Texts texts) {
        this.model = model;
        this.desk = desk;
        this.texts = texts;
        setId("walk-strip");
        getStyleClass().add("walk-strip");
        setMinSize(0, 0);
        getChildren().add(strip);
        widthProperty().addListener(onChange);
        model.aimProperty().addListener(onChange);
        model.survey().judgementProperty().addListener(new WeakInvalidationListener(onChange));
        desk.memoryProperty().addListener(new WeakInvalidationListener(onChange));
    }

    private void draw() {
        double widthMm = getWidth() / (15 * MM_PER_TEXT * desk.settings().textPercent() / 100);
        Optional<CoveJudgement> judged = cove().flatMap(model::judged);
        boolean there = judged.isPresent() && widthMm > 0;
        strip.setVisible(there);
        if (there) {
            OptionalDouble here = model.aim() == null ? OptionalDouble.empty() : OptionalDouble.of(model.aim().atM());
            strip.show(LowStrip.of(judged.get(), texts.words(), widthMm, here));
        }
    }

    private Optional<String> cove() {
        return model.aim() != null ? Optional.of(model.aim().cove()) : model.walked().last().map(Reading::cove);
    }
}
