package covewalk.app.site;

import covewalk.app.forms.Choices;
import covewalk.app.forms.FormView;
import covewalk.app.forms.ItemsView;
import covewalk.app.forms.Says;
import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import covewalk.survey.Feed;
import covewalk.survey.Placement;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A cove: its drawing on top, the next reel below it, then what lies there, and last the cove's own lines. */
final class CovePage extends VBox {

    private final SiteModel model;
    private final Texts texts;
    private final FormView form;
    private final LayView lay;

    CovePage(SiteModel model) {
        this.model = model;
        this.texts = model.texts();
        getStyleClass().add("site-page");
        form = new FormView(model.cove().form());
        lay = new LayView(model.lay(), texts);
        form.setAfterTheLast(lay::focus);
        form.setAfter("lengthM", this::toTheFirstReel);
        getChildren().addAll(drawing(), taps(), new Says("strip-says", "small", model.touch().saysProperty()), lay,
                heading("cove.itself"), form, heading("cove.placements"), placements(), heading("cove.feeds"), feeds(), remove());
    }

    /** Name and length are enough to lay reels; what else there is to say has time. */
    private boolean toTheFirstReel() {
        boolean empty = model.cove().placements().items().isEmpty();
        if (empty) {
            lay.focus();
        }
        return empty;
    }

    private PicturePane drawing() {
        PicturePane pane = new PicturePane();
        pane.setId("cove-strip");
        pane.pictureProperty().bind(model.touch().pictureProperty());
        StripTouch touch = model.touch();
        pane.setOnMousePressed(event -> touch.press(mm(pane, event.getX())));
        pane.setOnMouseDragged(event -> touch.drag(mm(pane, event.getX())));
        pane.setOnMouseReleased(event -> touch.release(mm(pane, event.getX())));
        return pane;
    }

    private static double mm(PicturePane pane, double x) {
        return x / pane.getWidth() * CoveDrawing.WIDTH;
    }

    private Choices<StripTouch.Tap> taps() {
        return new Choices<>("tap", texts.get("tap"), model.touch().tapProperty(), model.touch().tapProperty()::set,
                List.of(StripTouch.Tap.values()), tap -> tap.name().toLowerCase(Locale.ROOT),
                tap -> texts.get("tap." + tap.name().toLowerCase(Locale.ROOT)));
    }

    private ItemsView<Placement> placements() {
        return new ItemsView<>(model.cove().placements(), model.cove().placement(), model.lay()::line, texts.get("placements.none"),
                texts.get("placements.remove"));
    }

    private ItemsView<Feed> feeds() {
        ItemsView<Feed> view = new ItemsView<>(model.cove().feeds(), model.cove().feed(), feed -> texts.get("cove.feed",
                model.writing().length(feed.atM()), feed.driver(), feed.circuit()), texts.get("feeds.none"), texts.get("feeds.remove"));
        view.withAdd(texts.get("feeds.add"), () -> new Feed(0, "", ""));
        return view;
    }

    private HBox remove() {
        Button remove = new Button(texts.get("cove.remove"));
        remove.setId("cove-remove");
        remove.setOnAction(event -> model.removeCove());
        return new HBox(remove);
    }

    private Label heading(String key) {
        Label label = new Label(texts.get(key));
        label.getStyleClass().add("site-heading");
        return label;
    }

    /** To its name first, as long as nothing lies in it; then to the next reel. */
    void focusFirst() {
        if (model.cove().placements().items().isEmpty()) {
            form.focusFirst();
        } else {
            lay.focus();
        }
    }
}
