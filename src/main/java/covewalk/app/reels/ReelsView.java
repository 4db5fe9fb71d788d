package covewalk.app.reels;

import covewalk.app.forms.FormView;
import covewalk.app.forms.ReelLine;
import covewalk.app.forms.Says;
import covewalk.app.forms.ScanField;
import covewalk.app.strip.DriftView;
import covewalk.app.text.Texts;
import covewalk.survey.Reel;
import java.util.List;
import java.util.Optional;
import javafx.beans.Observable;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The box for a scanner on top, the reels found at the left, or above where there is little room, and the chosen one. */
final class ReelsView extends BorderPane {

    private static final double NARROW_EM = 56;
    private static final double USUAL_TEXT_PX = 15;

    private final ReelsModel model;
    private final Texts texts;
    private final ScanField search = new ScanField();
    private final ListView<Reel> list;
    private final ScrollPane detail;
    /** Where there is little room the list takes the place of the reel, while this is pressed. */
    private final ToggleButton choose = new ToggleButton();

    /** @param drift says beside the measured colours whether a drift is taken off them */
    ReelsView(ReelsModel model, DriftView drift) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().addAll("page", "reels");
        getStylesheets().addAll(FormView.class.getResource("forms.css").toExternalForm(),
                ReelsView.class.getResource("reels.css").toExternalForm());
        list = list();
        detail = new ScrollPane(new ReelDetail(model));
        detail.setId("reel-scroll");
        detail.setFitToWidth(true);
        detail.getStyleClass().add("reel-scroll");
        drift.getStyleClass().add("reel-drift");
        for (Region scrolls : List.of(list, detail, this)) { // however little room the trouble bar leaves
            scrolls.setMinHeight(0);
        }
        setTop(new VBox(header(), drift));
        setCenter(detail);
        model.found().addListener((Observable changed) -> select());
        model.factsProperty().addListener((property, before, now) -> select());
        widthProperty().addListener((property, before, now) -> turn());
        turn();
    }

    private Node header() {
        Label title = new Label(texts.get("title"));
        title.getStyleClass().add("heading");
        search.setId("reel-search");
        search.textProperty().bindBidirectional(model.searchProperty());
        search.setOnAction(event -> {
            model.enter();
            choose.setSelected(false);
            search.selectAll();
            detail.setVvalue(0);
        });
        Label name = new Label(texts.get("search"));
        name.setLabelFor(search);
        choose.setText(texts.get("list"));
        choose.setId("reel-choose");
        choose.setSelected(true);
        choose.selectedProperty().addListener((property, before, now) -> turn());
        name.setWrapText(true);
        name.setMinHeight(USE_PREF_SIZE);
        VBox scan = new VBox(3, name, search);
        scan.getStyleClass().add("line");
        FlowPane row = new FlowPane(16, 6, title, choose, scan, new Says("reel-found", "small", model.saysProperty()));
        row.getStyleClass().add("reel-head");
        row.setRowValignment(VPos.BOTTOM);
        return row;
    }

    private ListView<Reel> list() {
        ListView<Reel> view = new ListView<>(model.found());
        view.setId("reel-found-list");
        view.setAccessibleText(texts.get("title"));
        Label none = new Label(texts.get("none"));
        none.setWrapText(true);
        view.setPlaceholder(none);
        ReelLine lines = new ReelLine(texts.words());
        view.setCellFactory(all -> new ReelCell(lines));
        view.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            if (now != null && !model.chosen().equals(Optional.of(now))) {
                model.choose(now);
                choose.setSelected(false);
            }
        });
        return view;
    }

    private void select() {
        int index = model.chosen().map(model.found()::indexOf).orElse(-1);
        if (index >= 0 && index != list.getSelectionModel().getSelectedIndex()) {
            list.getSelectionModel().select(index);
            list.scrollTo(Math.max(0, index - 2));
        }
    }

    private void turn() {
        boolean narrow = getWidth() < NARROW_EM * USUAL_TEXT_PX * model.textPercent() / 100;
        choose.setVisible(narrow);
        choose.setManaged(narrow);
        setLeft(null); // it must have left one place before it can take the other
        setCenter(null);
        setLeft(narrow ? null : list);
        setCenter(narrow && choose.isSelected() ? list : detail);
    }

    void focusFirst() {
        model.chooseAtSpot();
        search.requestFocus();
        search.selectAll();
    }

    /** One reel in one line. */
    private static final class ReelCell extends ListCell<Reel> {

        private final ReelLine lines;

        ReelCell(ReelLine lines) {
            this.lines = lines;
            setPrefWidth(0); // as wide as the list: a long label ends in dots
        }

        @Override
        protected void updateItem(Reel item, boolean empty) {
            super.updateItem(item, empty);
            setText(empty || item == null ? "" : lines.of(item));
        }
    }
}
