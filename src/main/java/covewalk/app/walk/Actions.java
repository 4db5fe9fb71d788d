package covewalk.app.walk;

import covewalk.app.text.Texts;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.text.TextAlignment;

/** The large actions below the fields. */
final class Actions extends HBox {

    private final Texts texts;
    private final Button reference;

    Actions(WalkModel model, Texts texts, Runnable note, Runnable more) {
        this.texts = texts;
        getStyleClass().add("walk-actions");
        Button back = button("walk-back", texts.get("action.back"), texts.get("action.back.says"), model.way()::back);
        Button repeat = button("walk-repeat", texts.get("action.repeat"), texts.get("action.repeat.says"), model.way()::repeatHere);
        Button skip = button("walk-skip", texts.get("action.skip"), texts.get("action.skip.says"), model.way()::skip);
        reference = button("walk-reference", texts.get("action.reference"), texts.get("action.reference.says"), model.way()::reference);
        getChildren().addAll(back, repeat, skip, button("walk-note", texts.get("action.note"), texts.get("action.note.says"), note),
                reference, button("walk-more", texts.get("action.more"), texts.get("action.more.says"), more));
        model.way().aimProperty().addListener(observable -> enable(model, skip));
        enable(model, skip);
        model.says().dueShortProperty().addListener(observable -> due(model.says()));
        due(model.says());
    }

    private static void enable(WalkModel model, Button skip) {
        skip.setDisable(model.way().aim() == null);
    }

    private void due(WalkSays says) {
        reference.setText(texts.get("action.reference") + says.dueShortProperty().get());
        reference.getStyleClass().remove("walk-due");
        if (says.dueNowProperty().get()) {
            reference.getStyleClass().add("walk-due");
        }
    }

    private static Button button(String id, String text, String says, Runnable act) {
        Button button = new Button(text);
        button.setId(id);
        button.setWrapText(true);
        button.setTextAlignment(TextAlignment.CENTER);
        button.setTooltip(new Tooltip(says));
        button.setAccessibleHelp(says);
        button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
        button.setPrefWidth(10);
        button.setOnAction(event -> act.run());
        HBox.setHgrow(button, Priority.ALWAYS);
        return button;
    }
}
