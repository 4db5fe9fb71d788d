package covewalk.app.walk;

import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import covewalk.plot.HereMark;
import covewalk.plot.Picture;
import covewalk.plot.Strip;
import covewalk.plot.StripFrame;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.verdict.CoveJudgement;
import covewalk.words.Words;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The strip of the cove that is walked, as wide as there is room for, and below it what is at its left and how it is coloured. */
final class StripPane extends VBox {

    /** Pixels to a millimetre of the picture, for each pixel of the text's size. */
    private static final double PX_PER_MM = 0.26;

    private final WalkModel model;
    private final Supplier<Settings> settings;
    private double textPx = 15;
    private boolean low;
    private final Texts texts;
    private final PicturePane strip = new PicturePane();
    private final Label caption = new Label();
    private final InvalidationListener onChange = observable -> draw();

    /** @param settings in the dark no light area may light the ceiling */
    StripPane(WalkModel model, Texts texts, Supplier<Settings> settings) {
        this.model = model;
        this.settings = settings;
        this.texts = texts;
        setId("walk-strip");
        getStyleClass().add("walk-strip");
        setMinSize(0, 0);
        caption.setId("walk-strip-caption");
        caption.getStyleClass().add("small");
        caption.setMinWidth(0);
        getChildren().addAll(strip, caption);
        widthProperty().addListener(onChange);
        model.way().aimProperty().addListener(onChange);
        model.survey().judgementProperty().addListener(new WeakInvalidationListener(onChange));
    }

    /**
     * @param px of the text about it, with which its letters grow
     * @param low whether it has to do with half the height, and without a caption
     */
    void fit(double px, boolean low) {
        textPx = px;
        this.low = low;
        caption.setManaged(!low);
        draw();
    }

    private void draw() {
        double widthMm = getWidth() / (textPx * PX_PER_MM);
        Optional<CoveJudgement> judged = cove().flatMap(model::judged);
        boolean there = judged.isPresent() && widthMm > 0;
        strip.setVisible(there);
        caption.setVisible(there && !low);
        if (there) {
            draw(judged.get(), widthMm);
        }
    }

    private void draw(CoveJudgement judged, double widthMm) {
        StripFrame frame = StripFrame.screen(judged.cove(), widthMm, settings.get().theme() == Theme.DARK);
        Words words = texts.words().lengthsIn(settings.get().lengths());
        Picture picture = low ? Strip.lowest(judged, words, frame) : Strip.of(judged, words, frame);
        strip.show(model.way().aim() == null ? picture : HereMark.on(picture, frame, model.way().aim().atM(), words));
        caption.setText(Strip.datum(judged.cove(), words) + " \u00b7 " + Strip.larger(judged, words));
    }

    private Optional<String> cove() {
        return model.way().aim() != null ? Optional.of(model.way().aim().cove()) : model.way().walked().last(reading -> reading.role() == Role.WALK).map(Reading::cove);
    }
}
