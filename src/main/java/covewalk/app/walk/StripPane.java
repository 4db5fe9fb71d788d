package covewalk.app.walk;

import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import covewalk.plot.LowStrip;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.verdict.CoveJudgement;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.layout.StackPane;

/** The strip of the cove that is walked, as wide as there is room for. */
final class StripPane extends StackPane {

    /** Pixels to a millimetre of the picture, for each pixel of the text's size. */
    private static final double PX_PER_MM = 0.29;

    private final WalkModel model;
    private double textPx = 15;
    private final Texts texts;
    private final PicturePane strip = new PicturePane();
    private final InvalidationListener onChange = observable -> draw();

    StripPane(WalkModel model, Texts texts) {
        this.model = model;
        this.texts = texts;
        setId("walk-strip");
        getStyleClass().add("walk-strip");
        setMinSize(0, 0);
        getChildren().add(strip);
        widthProperty().addListener(onChange);
        model.way().aimProperty().addListener(onChange);
        model.survey().judgementProperty().addListener(new WeakInvalidationListener(onChange));
    }

    /** Its letters grow with the text about it. */
    void text(double px) {
        textPx = px;
        draw();
    }

    private void draw() {
        double widthMm = getWidth() / (textPx * PX_PER_MM);
        Optional<CoveJudgement> judged = cove().flatMap(model::judged);
        boolean there = judged.isPresent() && widthMm > 0;
        strip.setVisible(there);
        if (there) {
            OptionalDouble here = model.way().aim() == null ? OptionalDouble.empty() : OptionalDouble.of(model.way().aim().atM());
            strip.show(LowStrip.of(judged.get(), texts.words(), widthMm, here));
        }
    }

    private Optional<String> cove() {
        return model.way().aim() != null ? Optional.of(model.way().aim().cove()) : model.way().walked().last(reading -> reading.role() == Role.WALK).map(Reading::cove);
    }
}
