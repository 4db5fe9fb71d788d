package covewalk.app.forms;

import covewalk.app.text.Texts;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/** One line of a form: its name, where it is typed or chosen, what it means, and what is to be said of it. */
final class LineView extends VBox {

    private final FormLine line;
    private final Runnable take;
    private final Runnable entered;
    private final Node control;

    /**
     * @param id of the control
     * @param meaning one sentence, or empty
     * @param take what is done when the line is left
     * @param entered what is done after Enter
     */
    LineView(FormLine line, String id, Texts texts, String label, String meaning, Runnable take, Runnable entered) {
        this.line = line;
        this.take = take;
        this.entered = entered;
        getStyleClass().add("line");
        Label name = new Label(label);
        name.setWrapText(true);
        name.setMinHeight(USE_PREF_SIZE);
        control = line.ask().isYesOrNo() ? flag(label) : line.ask().choices().isEmpty() ? typed() : choice(id, label, texts);
        control.setId(id);
        name.setLabelFor(control);
        if (!line.ask().isYesOrNo()) {
            getChildren().add(name);
        }
        getChildren().add(control);
        says("line-meaning", meaning, id + "-meaning");
        saysOf(line.troubleProperty(), "line-trouble", id + "-trouble");
        saysOf(line.remarkProperty(), "line-remark", id + "-remark");
    }

    Node control() {
        return control;
    }

    private TextField typed() {
        TextField field = new ScanField();
        field.textProperty().bindBidirectional(line.textProperty());
        field.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take.run();
            }
        });
        field.setOnAction(event -> {
            take.run();
            if (line.troubleProperty().get().isEmpty()) {
                entered.run();
            } else {
                field.selectAll();
            }
        });
        return field;
    }

    private CheckBox flag(String label) {
        CheckBox box = new CheckBox(label);
        box.setWrapText(true);
        line.textProperty().addListener((property, before, now) -> box.setSelected(Boolean.parseBoolean(now)));
        box.setSelected(Boolean.parseBoolean(line.textProperty().get()));
        box.setOnAction(event -> set(Boolean.toString(box.isSelected())));
        return box;
    }

    private Choices<String> choice(String id, String label, Texts texts) {
        return new Choices<>(id, label, line.textProperty(), this::set, line.ask().choices(), code -> code,
                code -> texts.get("choice." + line.ask().name() + "." + code));
    }

    private void set(String code) {
        line.textProperty().set(code);
        take.run();
    }

    private void says(String style, String text, String id) {
        if (!text.isEmpty()) {
            Label label = new Label(text);
            label.setId(id);
            label.getStyleClass().addAll("small", style);
            label.setWrapText(true);
            getChildren().add(label);
        }
    }

    private void saysOf(ReadOnlyStringProperty text, String style, String id) {
        getChildren().add(new Says(id, style, text));
        text.addListener((property, before, now) -> control.setAccessibleHelp(now));
    }
}
