package covewalk.app.site;

import covewalk.app.forms.Choices;
import covewalk.app.forms.GroupSeparator;
import covewalk.app.forms.Says;
import covewalk.app.text.Texts;
import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Where a table is pasted, and what its columns hold is asked. */
final class PasteView extends VBox {

    private final PasteReels model;
    private final Texts texts;
    private final VBox question = new VBox(6);

    PasteView(PasteReels model, Texts texts) {
        this.model = model;
        this.texts = texts;
        getStyleClass().add("lay");
        TextArea area = new TextArea();
        area.setId("paste-text");
        area.setPrefRowCount(4);
        GroupSeparator.keepIn(area);
        area.textProperty().bindBidirectional(model.textProperty());
        area.addEventFilter(KeyEvent.KEY_PRESSED, event -> leave(area, event));
        Label name = new Label(texts.get("paste"));
        name.setLabelFor(area);
        name.setWrapText(true);
        Button add = new Button(texts.get("paste.add"));
        add.setId("paste-add");
        add.getStyleClass().add("main-action");
        add.disableProperty().bind(model.readyProperty().not());
        add.setOnAction(event -> model.add());
        Button ask = new Button(texts.get("paste.ask-all"));
        ask.setId("paste-ask");
        ask.visibleProperty().bind(model.textProperty().isNotEmpty());
        ask.managedProperty().bind(ask.visibleProperty());
        ask.setOnAction(event -> model.askAll());
        model.askedProperty().addListener((property, before, now) -> ask());
        model.textProperty().addListener((property, before, now) -> ask());
        getChildren().addAll(name, area, new Says("paste-says", "line-remark", model.saysProperty()),
                new LayRowView(model.layRow(), texts), question,
                new FlowPane(12, 8, add, ask), new Says("paste-trouble", "line-trouble", model.troubleProperty()));
        ask();
    }

    /** Tab goes on, as everywhere; tabs come in by pasting. */
    private static void leave(TextArea area, KeyEvent event) {
        if (event.getCode() == KeyCode.TAB && !event.isControlDown()) {
            event.consume();
            area.fireEvent(new KeyEvent(area, area, KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, event.isShiftDown(), true, false, false));
        }
    }

    private void ask() {
        question.getChildren().clear();
        if (model.askedProperty().get() >= 0) {
            Label label = new Label(model.question());
            label.setId("paste-question");
            label.setWrapText(true);
            question.getChildren().addAll(label, new Choices<>("paste-column", label.getText(), new SimpleObjectProperty<ReelColumn>(),
                    model::answer, List.of(ReelColumn.values()), ReelColumn::field, column -> texts.get("column." + column.field())));
        }
        question.setManaged(!question.getChildren().isEmpty());
    }
}
