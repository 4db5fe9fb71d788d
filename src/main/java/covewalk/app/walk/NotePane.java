package covewalk.app.walk;

import covewalk.app.text.Texts;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A note for the reading that is taken next; usual ones by one touch, since gloves type no sentences. */
final class NotePane extends VBox {

    private static final int USUAL = 6;

    private final TextField note = new TextField();

    NotePane(WalkModel model, Texts texts, Runnable done) {
        getStyleClass().add("walk-sheet");
        Label name = new Label(texts.get("note.title"));
        name.getStyleClass().add("heading");
        name.setLabelFor(note);
        note.setId("walk-note-text");
        note.textProperty().bindBidirectional(model.entry().note());
        note.setOnAction(event -> done.run());
        FlowPane usual = new FlowPane(8, 8);
        for (int i = 1; i <= USUAL; i++) {
            String text = texts.get("note.usual." + i);
            Button button = new Button(text);
            button.setId("walk-note-" + i);
            button.setOnAction(event -> {
                note.setText(note.getText().isBlank() ? text : note.getText() + "; " + text);
                done.run();
            });
            usual.getChildren().add(button);
        }
        Button none = new Button(texts.get("note.none"));
        none.setId("walk-note-clear");
        none.setOnAction(event -> note.clear());
        Button close = new Button(texts.get("sheet.done"));
        close.setId("walk-note-done");
        close.setOnAction(event -> done.run());
        getChildren().addAll(name, note, usual, new FlowPane(8, 8, close, none));
    }

    void begin() {
        note.requestFocus();
        note.end();
    }
}
