package covewalk.app.surveys;

import covewalk.app.forms.Choices;
import covewalk.app.forms.Says;
import covewalk.app.text.Texts;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.Observable;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** A meter's exported file into the survey that is open. */
final class ImportView extends VBox {

    private static final int MOST_BUTTONS = 12;

    private final ImportMeter model;
    private final Texts texts;
    private final VBox whichCove = new VBox();

    ImportView(ImportMeter model, Texts texts) {
        super(8);
        this.model = model;
        this.texts = texts;
        Button start = Named.main("import-start", texts.get("import.start"), model::start);
        start.disableProperty().bind(model.possibleProperty().not().or(model.runningProperty()));
        Label whyNot = new Label(texts.get("import.no-survey"));
        whyNot.setWrapText(true);
        whyNot.visibleProperty().bind(model.possibleProperty().not());
        whyNot.managedProperty().bind(whyNot.visibleProperty());
        CheckBox back = new CheckBox(texts.get("import.back"));
        back.setId("import-back");
        back.selectedProperty().bindBidirectional(model.backProperty());
        FlowPane row = new FlowPane(Named.field("import-file", texts.get("import.file"), model.fileProperty(), model::start),
                Named.beside(Named.button("import-browse", texts.get("import.browse"), this::browse)), whichCove,
                Named.field("import-from", texts.get("import.from"), model.startProperty(), model::start),
                Named.field("import-every", texts.get("import.every"), model.everyProperty(), model::start), Named.beside(back),
                Named.field("import-columns", texts.get("import.columns"), model.columnsProperty(), model::start));
        row.getStyleClass().add("form");
        model.coves().addListener((Observable changed) -> askCove());
        askCove();
        getChildren().addAll(whyNot, row, start, new Says("import-says", "line-remark", model.saysProperty()),
                new Says("import-trouble", "line-trouble", model.troubleProperty()));
    }

    /** Some surveys have hundreds: then it is typed. */
    private void askCove() {
        if (model.coves().size() > MOST_BUTTONS) {
            whichCove.getChildren().setAll(Named.field("import-cove", texts.get("import.cove"), model.coveProperty(), model::start));
            return;
        }
        List<String> all = new ArrayList<>(List.of(""));
        all.addAll(model.coves());
        whichCove.getChildren().setAll(new Named(texts.get("import.cove"), new Choices<>("import-cove", texts.get("import.cove"),
                model.coveProperty(), model.coveProperty()::set, all, cove -> cove.isEmpty() ? "in-file" : cove,
                cove -> cove.isEmpty() ? texts.get("import.cove-in-file") : cove)));
    }

    private void browse() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(texts.get("import.file"));
        File chosen = chooser.showOpenDialog(getScene().getWindow());
        if (chosen != null) {
            model.fileProperty().set(Path.of(chosen.getPath()).toString());
        }
    }
}
