package covewalk.app.site;

import covewalk.app.forms.Says;
import covewalk.app.forms.ScanField;
import covewalk.app.text.Texts;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The box for a scanner, and what came of the last label. */
final class AddReelView extends VBox {

    private final ScanField field = new ScanField();

    AddReelView(AddReel model, Texts texts) {
        getStyleClass().add("lay");
        field.setId("reel-scan");
        field.textProperty().bindBidirectional(model.textProperty());
        field.setOnAction(event -> model.enter());
        Label label = new Label(texts.get("reel.scan"));
        label.setLabelFor(field);
        Button add = new Button(texts.get("reel.add"));
        add.setId("reel-add");
        add.getStyleClass().add("main-action");
        add.setOnAction(event -> {
            model.enter();
            focus();
        });
        getChildren().addAll(label, new FlowPane(12, 8, field, add), new Says("reel-scan-says", "line-remark", model.saysProperty()));
    }

    void focus() {
        field.requestFocus();
    }
}
