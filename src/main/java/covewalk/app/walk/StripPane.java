package covewalk.app.walk;

import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import covewalk.plot.HereMark;
import covewalk.plot.Picture;
import covewalk.plot.Strip;
import covewalk.plot.StripFrame;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.verdict.CoveJudgement;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.layout.StackPane;

/** The strip of the cove that is walked, as wide as there is room for. */
final class StripPane extends StackPane {

    /** Pixels to a millimetre of the picture, for each pixel of the text's size. */
    private static final double PX_PER_MM = 0.26;

    private final WalkModel model;
    private final BooleanSupplier dark;
    private double textPx = 15;
    private final Texts texts;
    private final PicturePane strip = new PicturePane();
    private final InvalidationListener onChange = observable -> draw();

    /** @param dark whether no light area may light the ceiling */
    StripPane(WalkModel model, Texts texts, BooleanSupplier dark) {
        this.model = model;
        this.dark = dark;
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
            StripFrame frame = StripFrame.screen(judged.get().cove(), widthMm, dark.getAsBoolean());
            Picture picture = Strip.of(judged.get(), texts.words(), frame);
            strip.show(model.way().aim() == null ? picture : HereMark.on(picture, frame, model.way().aim().atM(), texts.words()));
        }
    }

    private Optional<String> cove() {
        return model.way().aim() != null ? Optional.of(model.way().aim().cove()) : model.way().walked().last(reading -> reading.role() == Role.WALK).map(Reading::cove);
    }
}
