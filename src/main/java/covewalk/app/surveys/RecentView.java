package covewalk.app.surveys;

import covewalk.app.text.Texts;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.beans.Observable;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The surveys of this computer, the latest first. */
final class RecentView extends VBox {

    private final RecentSurveys model;
    private final Texts texts;
    private final Consumer<Path> open;

    RecentView(RecentSurveys model, Texts texts, Consumer<Path> open) {
        this.model = model;
        this.texts = texts;
        this.open = open;
        setId("recent");
        model.surveys().addListener((Observable changed) -> fill());
        fill();
    }

    /** A dozen rows at most, so that they are made anew whenever one changes; the focus stays where it was. */
    private void fill() {
        String focused = getScene() == null || getScene().getFocusOwner() == null ? null : getScene().getFocusOwner().getId();
        getChildren().clear();
        for (KnownSurvey known : model.surveys()) {
            getChildren().add(new SurveyRow(known, getChildren().size(), texts, () -> open.accept(known.folder()),
                    () -> model.forget(known.folder())));
        }
        if (getChildren().isEmpty()) {
            Label none = new Label(texts.get("recent.none"));
            none.setWrapText(true);
            getChildren().add(none);
        }
        if (focused != null && focused.startsWith("recent-") && lookup("#" + focused) != null) {
            lookup("#" + focused).requestFocus();
        }
    }
}
