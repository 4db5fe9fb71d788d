package covewalk.app.site;

import covewalk.app.forms.Says;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import javafx.beans.Observable;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Offers to lay a pasted row of reels end to end, a button for each cove that is still empty. */
final class LayRowView extends VBox {

    private final LayRow model;
    private final Texts texts;
    private final FlowPane coves = new FlowPane(6, 6);

    LayRowView(LayRow model, Texts texts) {
        super(6);
        this.model = model;
        this.texts = texts;
        getChildren().addAll(new Says("row-says", "line-remark", model.saysProperty()), coves);
        model.coves().addListener((Observable list) -> show());
        show();
    }

    private void show() {
        coves.getChildren().setAll(model.coves().stream().map(this::button).toList());
        coves.setManaged(!model.coves().isEmpty());
    }

    private Button button(Cove cove) {
        Button button = new Button(texts.get("row.lay", model.line(cove)));
        button.setId("row-lay-" + cove.id());
        button.setOnAction(event -> model.layIn(cove));
        return button;
    }
}
