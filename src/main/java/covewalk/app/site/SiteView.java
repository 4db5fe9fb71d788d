package covewalk.app.site;

import covewalk.app.forms.FormView;
import covewalk.app.forms.ItemsView;
import covewalk.app.forms.Says;
import covewalk.app.text.Texts;
import covewalk.survey.SetUp;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The sections at the left, or above where there is little room; the chosen one beside them. */
final class SiteView extends BorderPane {

    private static final double NARROW_EM = 56;
    private static final double USUAL_TEXT_PX = 15;

    private final SiteModel model;
    private final Texts texts;
    private final ListView<Section> sections;
    private final VBox aside;
    /** Where there is little room the sections take the place of the page, while this is pressed. */
    private final ToggleButton list = new ToggleButton();
    private final ScrollPane page = new ScrollPane();
    private Runnable focus = () -> { };
    private Section shown;

    SiteView(SiteModel model) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().addAll("page", "site");
        getStylesheets().addAll(SiteView.class.getResource("site.css").toExternalForm(),
                FormView.class.getResource("forms.css").toExternalForm());
        sections = sections();
        Button add = new Button(texts.get("cove.add"));
        add.setId("cove-add");
        add.setMaxWidth(Double.MAX_VALUE);
        add.setOnAction(event -> {
            model.addCove();
            focusFirst();
        });
        aside = new VBox(6, sections, add);
        aside.getStyleClass().add("site-sections");
        VBox.setVgrow(sections, Priority.ALWAYS);
        page.setFitToWidth(true);
        page.getStyleClass().add("site-scroll");
        page.setId("site-scroll");
        for (Region scrolls : List.of(sections, page, aside, this)) { // however little room the trouble bar leaves
            scrolls.setMinHeight(0);
        }
        setTop(header());
        setCenter(page);
        model.sectionProperty().addListener((property, before, now) -> {
            list.setSelected(false);
            show();
            turn();
        });
        list.selectedProperty().addListener((property, before, now) -> turn());
        model.description().surveyProperty().addListener((property, before, now) -> sections.refresh());
        widthProperty().addListener((property, before, now) -> turn());
        turn();
        show();
    }

    private Node header() {
        Label title = new Label(texts.get("title"));
        title.getStyleClass().add("heading");
        Button undo = new Button(texts.get("undo"));
        undo.setId("site-undo");
        undo.disableProperty().bind(model.description().canUndoProperty().not());
        undo.setOnAction(event -> model.undo());
        Says saved = new Says("site-saved", "small", Bindings.createStringBinding(() -> texts.get(
                model.description().canUndoProperty().get() ? "saved" : "saved.nothing-to-undo"), model.description().canUndoProperty()));
        list.setId("site-choose");
        for (Region part : List.of(list, saved)) { // as wide as the page at most
            part.maxWidthProperty().bind(widthProperty().subtract(2.5 * USUAL_TEXT_PX * model.textPercent() / 100));
        }
        FlowPane row = new FlowPane(16, 6, title, list, undo, saved);
        row.setMinWidth(0);
        row.setRowValignment(VPos.CENTER);
        VBox head = new VBox(4, row, new Says("site-trouble", "line-trouble", model.troubleProperty()));
        head.getStyleClass().add("site-head");
        return head;
    }

    private ListView<Section> sections() {
        ListView<Section> list = new ListView<>(model.sections());
        list.setId("site-sections");
        list.setAccessibleText(texts.get("sections"));
        list.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                this.list.setSelected(false);
                focusFirst();
            }
        });
        list.setCellFactory(view -> new SectionCell());
        list.getSelectionModel().select(model.sectionProperty().get());
        list.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            if (now != null) {
                model.sectionProperty().set(now);
            }
        });
        model.sectionProperty().addListener((property, before, now) -> {
            list.getSelectionModel().select(now);
            list.scrollTo(Math.max(0, model.sections().indexOf(now) - 2));
        });
        return list;
    }

    private void show() {
        Section now = model.sectionProperty().get();
        if (now.equals(shown) || model.description().survey() == null) {
            return;
        }
        shown = now;
        list.setText(texts.get("sections.choose", model.title(now)));
        page.setContent(switch (now.topic()) {
            case VISIT -> visit();
            case METER -> meter();
            case LIMITS -> limits();
            case REELS -> reels();
            case COVE -> cove();
        });
        page.setVvalue(0);
    }

    private Node visit() {
        VisitPage visit = new VisitPage(model);
        focus = visit::focusFirst;
        return visit;
    }

    private Node meter() {
        ItemsView<SetUp> view = new ItemsView<>(model.setUps(), model.forms().setUp(), setUp -> texts.get("setup.line", setUp.id(), setUp.meter()),
                texts.get("setups.none"), texts.get("setups.remove")).withKept(model::needed);
        view.withAdd(texts.get("setups.add"), () -> SetUpKind.fresh(model.setUps().items()));
        focus = () -> view.lookup("#setup-meter").requestFocus();
        return view;
    }

    private Node limits() {
        FormView view = new FormView(model.forms().limits());
        focus = view::focusFirst;
        return view;
    }

    private Node reels() {
        ReelsPage reels = new ReelsPage(model);
        focus = reels::focusFirst;
        return reels;
    }

    private Node cove() {
        CovePage cove = new CovePage(model);
        focus = cove::focusFirst;
        return cove;
    }

    void focusFirst() {
        show();
        applyCss(); // until then what is in the pane cannot take the focus
        focus.run();
    }

    private void turn() {
        boolean narrow = getWidth() < NARROW_EM * USUAL_TEXT_PX * model.textPercent() / 100;
        list.setVisible(narrow);
        list.setManaged(narrow);
        setLeft(null); // it must have left one place before it can take the other
        setCenter(null);
        setLeft(narrow ? null : aside);
        setCenter(narrow && list.isSelected() ? aside : page);
    }

    /** One section; its text follows what is typed. */
    private final class SectionCell extends ListCell<Section> {

        private SectionCell() {
            setPrefWidth(0); // as wide as the list: a long name ends in dots
        }

        @Override
        protected void updateItem(Section item, boolean empty) {
            super.updateItem(item, empty);
            setText(empty || item == null ? "" : model.title(item));
        }
    }
}
