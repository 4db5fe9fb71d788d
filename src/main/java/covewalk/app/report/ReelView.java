package covewalk.app.report;

import covewalk.app.forms.OfferedReels;
import covewalk.app.forms.ReelLine;
import covewalk.app.forms.Says;
import covewalk.app.forms.ScanField;
import covewalk.app.text.Texts;
import covewalk.report.Readership.Reader;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Which reel a dossier is about; takes no room for other readers. */
final class ReelView extends VBox {

    ReelView(ForWhom model, Texts texts) {
        super(4);
        ScanField reel = new ScanField();
        reel.setId("report-reel");
        reel.textProperty().bindBidirectional(model.reelProperty());
        Label label = new Label(texts.get("reel"));
        label.getStyleClass().add("weak");
        label.setLabelFor(reel);
        getChildren().addAll(label, reel, new Says("report-reel-says", "small", model.saysProperty()),
                new OfferedReels(model.offered(), new ReelLine(texts.words()), one -> {
                    model.reelProperty().set(one.id());
                    reel.requestFocus();
                }));
        visibleProperty().bind(model.readerProperty().isEqualTo(Reader.WARRANTY));
        managedProperty().bind(visibleProperty());
    }
}
