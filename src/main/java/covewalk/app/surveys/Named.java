package covewalk.app.surveys;

import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** A control with its name above it. */
final class Named extends VBox {

    Named(String name, Node control) {
        getStyleClass().add("line");
        Label label = new Label(name);
        label.setLabelFor(control);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(label, control);
    }

    /** @param enter what Enter does there */
    static Named field(String id, String name, StringProperty text, Runnable enter) {
        TextField field = new TextField();
        field.setId(id);
        field.textProperty().bindBidirectional(text);
        field.setOnAction(event -> enter.run());
        return new Named(name, field);
    }

    /** A control that needs no name, on one line with those that have one. */
    static Named beside(Node control) {
        Named named = new Named("", control);
        named.getStyleClass().setAll("beside");
        return named;
    }

    static Button button(String id, String text, Runnable action) {
        Button button = new Button(text);
        button.setId(id);
        button.setOnAction(event -> action.run());
        return button;
    }

    static Button main(String id, String text, Runnable action) {
        Button button = button(id, text, action);
        button.getStyleClass().add("main-action");
        return button;
    }
}
