package covewalk.app.report;

import covewalk.app.parts.Wrapped;
import covewalk.app.text.Texts;
import javafx.beans.Observable;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Where the code of a report is typed to see whether the survey is still what was sealed, and the answer. */
final class SealsView extends VBox {

    private final CheckSeals model;
    private final VBox answer = new VBox(6);

    SealsView(CheckSeals model, Texts texts) {
        super(8);
        this.model = model;
        setId("seals");
        Label head = new Label(texts.get("seals"));
        head.getStyleClass().add("part-heading");
        TextField code = new TextField();
        code.setId("seals-code");
        code.textProperty().bindBidirectional(model.codeProperty());
        code.setOnAction(event -> model.check());
        HBox.setHgrow(code, Priority.ALWAYS);
        Label name = new Wrapped(texts.get("seals.code"), "weak");
        name.setLabelFor(code);
        Button check = new Button(texts.get("seals.check"));
        check.setId("seals-check");
        check.setMinWidth(USE_PREF_SIZE);
        check.disableProperty().bind(model.runningProperty());
        check.setOnAction(event -> model.check());
        answer.setId("seals-answer");
        getChildren().addAll(head, new VBox(2, name, new HBox(8, code, check)), answer);
        model.answer().addListener((Observable list) -> show());
        show();
    }

    /** The first sentence is the answer, the others what it rests on. */
    private void show() {
        answer.getChildren().clear();
        for (String sentence : model.answer()) {
            answer.getChildren().add(new Wrapped(sentence, answer.getChildren().isEmpty() ? "label-head" : "report-remark"));
        }
        answer.setManaged(!answer.getChildren().isEmpty());
    }
}
