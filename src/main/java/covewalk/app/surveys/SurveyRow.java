package covewalk.app.surveys;

import covewalk.app.parts.Wrapped;
import covewalk.app.text.Texts;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A known survey: its name, where it lies, what it lacks; open it, or strike it off the list. Its buttons stand below where it is narrow. */
final class SurveyRow extends HBox {

    private static final double NARROW_EM = 26;

    private final VBox about;
    private final HBox buttons;

    SurveyRow(KnownSurvey known, int number, Texts texts, Runnable open, Runnable forget) {
        super(8);
        getStyleClass().add("survey-row");
        Label name = new Wrapped(known.name(), "survey-name");
        Label says = new Wrapped(known.says(), "survey-says");
        says.setId("recent-" + number + "-says");
        Label folder = new Wrapped(known.folder().toString(), "small");
        about = new VBox(2, name, says, folder);
        about.setMinWidth(0);
        HBox.setHgrow(about, Priority.ALWAYS);
        Button go = button("recent-" + number, texts.get("recent.open"), texts.get("recent.open-named", known.name()), open);
        go.setDisable(!known.there());
        buttons = new HBox(8, go, button("recent-" + number + "-forget", texts.get("recent.forget"),
                texts.get("recent.forget-named", known.name()), forget));
        buttons.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(about, buttons);
        widthProperty().addListener((property, before, now) -> arrange(folder.getFont().getSize()));
    }

    private void arrange(double em) {
        Pane beside = getWidth() < NARROW_EM * em ? about : this;
        if (buttons.getParent() != beside) {
            beside.getChildren().add(buttons);
        }
    }

    private static Button button(String id, String text, String spoken, Runnable action) {
        Button button = new Button(text);
        button.setId(id);
        button.setAccessibleText(spoken);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }
}
