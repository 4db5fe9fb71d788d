package covewalk.app.surveys;

import covewalk.app.forms.FormView;
import covewalk.app.forms.Says;
import covewalk.app.text.Texts;
import java.io.File;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;

/** Known surveys on top, then the ways to another one, then what is chosen for this computer. */
final class SurveysView extends ScrollPane {

    private final SurveysModel model;
    private final Texts texts;

    SurveysView(SurveysModel model) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().addAll("page", "surveys");
        getStylesheets().addAll(FormView.class.getResource("forms.css").toExternalForm(),
                SurveysView.class.getResource("surveys.css").toExternalForm());
        setFitToWidth(true);
        Label title = new Label(texts.get("title"));
        title.getStyleClass().add("heading");
        VBox all = new VBox(title, new RecentView(model.recent(), texts, model.open()::open), new Says("open-trouble", "line-trouble",
                model.open().troubleProperty()), heading("new.heading"), fresh(), heading("open.heading"), open(), heading("import.heading"),
                new ImportView(model.meter(), texts), heading("settings.heading"), new SettingsView(model.desk(), texts));
        all.getStyleClass().add("surveys-page");
        setContent(all);
        sceneProperty().addListener((property, before, now) -> {
            if (before == null && now != null) {
                Platform.runLater(this::focusFirst); // the window opens here, and is not there yet
            }
        });
    }

    private Node fresh() {
        FlowPane row = new FlowPane(Named.field("new-site", texts.get("new.site"), model.fresh().siteProperty(), model.fresh()::begin),
                Named.field("new-folder", texts.get("new.folder"), model.fresh().folderProperty(), model.fresh()::begin),
                Named.beside(Named.main("new-begin", texts.get("new.begin"), model.fresh()::begin)));
        row.getStyleClass().add("form");
        return new VBox(6, row, new Says("new-trouble", "line-trouble", model.fresh().troubleProperty()));
    }

    private Node open() {
        FlowPane row = new FlowPane(Named.field("open-folder", texts.get("open.folder"), model.open().folderProperty(), model.open()::open),
                Named.beside(new HBox(8, Named.button("open-button", texts.get("open.button"), model.open()::open),
                        Named.button("open-browse", texts.get("open.browse"), this::browse))),
                Named.beside(Named.button("open-demo", texts.get("open.demo"), model::openDemonstration)));
        row.getStyleClass().add("form");
        return new VBox(6, row, new Says("demo-trouble", "line-trouble", model.troubleProperty()));
    }

    private void browse() {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(texts.get("open.folder"));
        chooser.setInitialDirectory(model.open().nearest().toFile());
        File chosen = chooser.showDialog(getScene().getWindow());
        if (chosen != null) {
            model.open().folderProperty().set(chosen.getPath());
            model.open().open();
        }
    }

    private Label heading(String key) {
        Label label = new Label(texts.get(key));
        label.getStyleClass().add("surveys-heading");
        return label;
    }

    /** To the latest survey; on the first start to the name of a new one. */
    void focusFirst() {
        applyCss(); // until then what is in the pane cannot take the focus
        Node latest = getContent().lookup("#recent-0");
        (latest == null || latest.isDisabled() ? getContent().lookup("#new-site") : latest).requestFocus();
        setVvalue(0);
    }
}
