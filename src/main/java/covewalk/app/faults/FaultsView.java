package covewalk.app.faults;

import covewalk.app.desk.Desk;
import covewalk.app.strip.DiagramsView;
import covewalk.app.strip.Finding;
import covewalk.app.strip.StripView;
import covewalk.app.text.Texts;
import covewalk.verdict.Judgement;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The strip on top; below it the list at the left third and the chosen finding beside it. The diagrams of the cove stand
 * beside that where the window is wide, below it where it is high, and else in its place when asked for.
 */
final class FaultsView extends VBox {

    private static final double WIDE_EM = 100;
    private static final double LIST_SHARE = 0.33;
    private static final double LIST_MOST_EM = 32;

    private final Desk desk;
    private final FaultsModel model;
    private final Texts texts;
    private final FaultList list;
    private final ScrollPane card = new ScrollPane();
    private final DiagramsView diagrams;
    private final ToggleButton showDiagrams;
    private final HBox columns = new HBox();
    private final Label nothing = new Label();

    FaultsView(Desk desk, FaultsModel model) {
        this.desk = desk;
        this.model = model;
        this.texts = desk.texts(FaultsView.class);
        getStyleClass().addAll("page", "faults");
        setSpacing(8);
        showDiagrams = new ToggleButton(texts.get("diagrams"));
        showDiagrams.setId("faults-diagrams");
        showDiagrams.setOnAction(event -> arrange());
        diagrams = new DiagramsView(desk);
        list = new FaultList(desk, model, showDiagrams);
        card.setId("fault-card");
        card.setFitToWidth(true);
        card.getStyleClass().add("plain-scroll");
        nothing.setWrapText(true);
        nothing.setId("faults-nothing");
        VBox.setVgrow(columns, Priority.ALWAYS);
        columns.setSpacing(16);
        getChildren().addAll(new StripView(desk), columns);
        widthProperty().addListener((property, before, now) -> arrange());
        heightProperty().addListener((property, before, now) -> arrange());
        model.chosenProperty().addListener((property, before, now) -> show(before, now));
        model.judgement().addListener((property, before, now) -> show(model.chosenProperty().get(), model.chosenProperty().get()));
        show(null, model.chosenProperty().get());
    }

    void focusList() {
        list.focus();
    }

    private void show(Finding before, Finding now) {
        Judgement judgement = model.judgement().getValue();
        if (now == null || judgement == null) {
            nothing.setText(texts.get(judgement == null ? "judging" : model.nothingToActOn() ? "none" : "choose"));
            card.setContent(nothing);
            return;
        }
        boolean feet = desk.settings().feet();
        card.setContent(new CardView(new CardWords(texts, feet).card(now, judgement), texts, feet, model::walkThere));
        if (before == null || !now.sameAs(before)) {
            card.setVvalue(0);
        }
    }

    private void arrange() {
        double em = nothing.getFont().getSize();
        boolean wide = getWidth() > WIDE_EM * em;
        showDiagrams.setDisable(wide);
        boolean instead = !wide && showDiagrams.isSelected();
        Region middle = instead ? diagrams : card;
        columns.getChildren().setAll(list, middle);
        HBox.setHgrow(middle, Priority.ALWAYS);
        list.setMinWidth(0);
        list.setPrefWidth(Math.min(LIST_MOST_EM * em, LIST_SHARE * getWidth()));
        list.setMaxWidth(list.getPrefWidth());
        list.setMinWidth(list.getPrefWidth());
        middle.setMinWidth(0);
        if (wide) {
            columns.getChildren().add(diagrams);
            diagrams.setPrefWidth(0.3 * getWidth());
            diagrams.setMinWidth(0.3 * getWidth());
            HBox.setHgrow(diagrams, Priority.NEVER);
        } else {
            diagrams.setMinWidth(0);
            diagrams.setPrefWidth(USE_COMPUTED_SIZE);
        }
    }
}
