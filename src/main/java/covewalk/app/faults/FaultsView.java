package covewalk.app.faults;

import covewalk.app.desk.Desk;
import covewalk.app.forms.Says;
import covewalk.app.strip.DiagramsView;
import covewalk.app.strip.DriftView;
import covewalk.app.strip.Finding;
import covewalk.app.strip.FindingWords;
import covewalk.app.strip.StripView;
import covewalk.app.text.Texts;
import covewalk.verdict.Judgement;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The strip on top; below it the list at the left third and the chosen finding beside it. The diagrams of the cove stand
 * beside that where the window is wide, below it where it is high, and else in its place when asked for. In a narrow window the
 * list stands above the finding.
 */
final class FaultsView extends ScrollPane {

    /** Where the diagrams stand. */
    private enum Room { BESIDE, BELOW, INSTEAD }

    private static final double WIDE_EM = 100;
    private static final double TALL = 1.3;
    private static final double NARROW_EM = 46;
    private static final double LIST_HIGH_EM = 13;
    /** What the list and the card need; where there is less, the whole page scrolls. */
    private static final double LEAST_EM = 17;
    private static final double LIST_SHARE = 1 / 3.0;
    private static final double LIST_MOST_EM = 32;
    private static final double DIAGRAMS_SHARE = 0.3;

    private final Desk desk;
    private final FaultsModel model;
    private final Texts texts;
    private final FaultList list;
    private final ScrollPane card = new ScrollPane();
    private final DiagramsView diagrams;
    private final ToggleButton showDiagrams;
    private final HBox columns = new HBox(16);
    private final VBox all = new VBox(8);
    private final Label nothing = new Label();
    private final PunchModel punch;
    private final PunchView punchView;
    private final Says before;
    private Finding shown;

    FaultsView(Desk desk, FaultsModel model) {
        this.desk = desk;
        this.model = model;
        this.texts = desk.texts(FaultsView.class);
        this.punch = new PunchModel(desk);
        this.punchView = new PunchView(punch, texts);
        this.before = new Says("fault-before", "fault-line", punch.beforeProperty());
        getStyleClass().addAll("page", "faults");
        setFitToWidth(true);
        setFitToHeight(true);
        showDiagrams = new ToggleButton(texts.get("diagrams"));
        showDiagrams.setId("faults-diagrams");
        showDiagrams.setOnAction(event -> arrange());
        diagrams = new DiagramsView(desk);
        list = new FaultList(texts, () -> new FindingWords(texts, desk.settings().feet()), model);
        card.setId("fault-card");
        card.setFitToWidth(true);
        card.setMinWidth(0);
        card.getStyleClass().add("plain-scroll");
        nothing.setWrapText(true);
        nothing.setId("faults-nothing");
        FaultsFilter filter = new FaultsFilter(model, texts);
        filter.getChildren().add(showDiagrams);
        VBox.setVgrow(columns, Priority.ALWAYS);
        columns.getChildren().addAll(list, card);
        HBox.setHgrow(card, Priority.ALWAYS);
        HBox.setHgrow(diagrams, Priority.SOMETIMES);
        all.getChildren().addAll(new StripView(desk), new DriftView(desk), filter, columns);
        setContent(all);
        widthProperty().addListener((property, before, now) -> arrange());
        heightProperty().addListener((property, before, now) -> arrange());
        model.chosenProperty().addListener((property, before, now) -> show(now));
        model.judgement().addListener((property, before, now) -> show(model.chosenProperty().get()));
        sceneProperty().addListener((property, before, now) -> show(model.chosenProperty().get()));
    }

    void focusList() {
        list.focus();
    }

    private void show(Finding now) {
        Judgement judgement = model.judgement().getValue();
        if (getScene() == null) {
            return; // nobody sees it
        }
        if (now == null || judgement == null) {
            nothing.setText(texts.get(judgement == null ? "judging" : model.nothingToActOn() ? "none" : "choose"));
            card.setContent(nothing);
            shown = null;
            punch.look(null);
            return;
        }
        punch.look(now);
        boolean another = shown == null || !now.sameAs(shown);
        shown = now;
        card.setContent(new CardView(new CardWords(texts, desk.settings().feet()).card(now, judgement), texts, desk.settings(),
                before, punchView, model::walkThere));
        if (another) {
            card.setVvalue(0);
        }
    }

    private void arrange() {
        double em = nothing.getFont().getSize();
        Room room = getWidth() > WIDE_EM * em ? Room.BESIDE : getHeight() > TALL * getWidth() && !isNarrow(em) ? Room.BELOW : Room.INSTEAD;
        stack(isNarrow(em), em);
        columns.setMinHeight(LEAST_EM * em);
        double beside = room == Room.BESIDE ? DIAGRAMS_SHARE * getWidth() : 0;
        diagrams.setMinWidth(beside);
        diagrams.setPrefWidth(room == Room.BESIDE ? beside : USE_COMPUTED_SIZE);
        diagrams.setMinHeight(room == Room.BELOW ? DIAGRAMS_SHARE * getHeight() : 0);
        showDiagrams.setVisible(room == Room.INSTEAD);
        put(columns, card, !(room == Room.INSTEAD && showDiagrams.isSelected()), 1);
        put(all, diagrams, room == Room.BELOW, all.getChildren().size());
        put(columns, diagrams, room == Room.BESIDE || room == Room.INSTEAD && showDiagrams.isSelected(), columns.getChildren().size());
    }

    private boolean isNarrow(double em) {
        return getWidth() < NARROW_EM * em;
    }

    private void stack(boolean above, double em) {
        double listWidth = above ? 0 : Math.min(LIST_MOST_EM * em, LIST_SHARE * getWidth());
        list.setMinWidth(listWidth);
        list.setMaxWidth(above ? Double.MAX_VALUE : listWidth);
        list.setMinHeight(above ? LIST_HIGH_EM * em : 0);
        list.setMaxHeight(above ? LIST_HIGH_EM * em : Double.MAX_VALUE);
        put(columns, list, !above, 0);
        put(all, list, above, all.getChildren().indexOf(columns));
    }

    /** Nothing is taken out that stays: it would lose the focus. */
    private static void put(Pane into, Region part, boolean there, int at) {
        boolean is = into.getChildren().contains(part);
        if (there && !is) {
            into.getChildren().add(at, part);
        } else if (!there && is) {
            into.getChildren().remove(part);
        }
    }
}
