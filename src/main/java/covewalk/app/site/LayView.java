package covewalk.app.site;

import covewalk.app.forms.ReelLine;
import covewalk.app.forms.Says;
import covewalk.app.forms.ScanField;
import covewalk.app.text.Texts;
import covewalk.survey.Reel;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The next reel: where it is scanned or typed, where it ends, and the labels that what is typed may mean. */
final class LayView extends VBox {

    private static final int LONGEST = 60;

    private final LayReel model;
    private final ReelLine labels;
    private final ScanField reel = new ScanField();
    private final FlowPane offered = new FlowPane(6, 6);

    LayView(LayReel model, Texts texts) {
        this.model = model;
        this.labels = new ReelLine(texts.words());
        getStyleClass().add("lay");
        reel.setId("lay-reel");
        reel.textProperty().bindBidirectional(model.reelProperty());
        reel.setOnAction(event -> lay());
        TextField end = new TextField();
        end.setId("lay-end");
        end.textProperty().bindBidirectional(model.endProperty());
        end.setOnAction(event -> lay());
        Button button = new Button(texts.get("lay.button"));
        button.setId("lay-button");
        button.getStyleClass().add("main-action");
        button.disableProperty().bind(model.fullProperty());
        button.setOnAction(event -> lay());
        FlowPane row = new FlowPane(12, 8, named(texts.get("lay.reel"), reel), named(texts.get("lay.end"), end), named("", button));
        model.offered().addListener((Observable list) -> offer());
        getChildren().addAll(row, new Says("lay-says", "small", model.saysProperty()), offered,
                new Says("lay-trouble", "line-trouble", model.troubleProperty()));
        offer();
    }

    private static VBox named(String text, Node control) {
        Label label = new Label(text);
        label.setLabelFor(control);
        return new VBox(3, label, control);
    }

    private void lay() {
        model.lay();
        focus();
    }

    void focus() {
        reel.requestFocus();
        reel.selectAll();
    }

    /** In the page, one touch each; nothing is chosen that was not touched. */
    private void offer() {
        offered.getChildren().setAll(model.offered().stream().map(this::button).toList());
        offered.setManaged(!model.offered().isEmpty());
    }

    private Button button(Reel one) {
        String label = labels.of(one);
        Button button = new Button(label.length() <= LONGEST ? label : label.substring(0, LONGEST - 1) + "\u2026");
        button.setAccessibleText(label);
        button.setOnAction(event -> {
            model.pick(one);
            focus();
        });
        return button;
    }
}
