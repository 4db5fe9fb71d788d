package covewalk.app.site;

import covewalk.app.forms.OfferedReels;
import covewalk.app.forms.ReelLine;
import covewalk.app.forms.Says;
import covewalk.app.forms.ScanField;
import covewalk.app.text.Texts;
import covewalk.survey.Reel;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The next reel: where it is scanned or typed, where it ends, and the labels that what is typed may mean. */
final class LayView extends VBox {

    private final LayReel model;
    private final ScanField reel = new ScanField();

    LayView(LayReel model, Texts texts) {
        this.model = model;
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
        getChildren().addAll(row, new Says("lay-says", "small", model.saysProperty()),
                new OfferedReels(model.offered(), new ReelLine(texts.words()), this::pick),
                new Says("lay-trouble", "line-trouble", model.troubleProperty()));
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

    private void pick(Reel one) {
        model.pick(one);
        focus();
    }

    void focus() {
        reel.requestFocus();
        reel.selectAll();
    }
}
