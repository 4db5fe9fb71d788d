package covewalk.app.site;

import covewalk.app.forms.ItemsView;
import covewalk.app.forms.ReelLine;
import covewalk.survey.Reel;
import javafx.scene.layout.VBox;

/** All reels of the survey: scanned or typed one by one, pasted as a table, and each with its label. */
final class ReelsPage extends VBox {

    private final AddReelView add;

    ReelsPage(SiteModel model) {
        getStyleClass().add("site-page");
        ReelLine lines = new ReelLine(model.texts().words());
        add = new AddReelView(model.addReel(), model.texts());
        ItemsView<Reel> list = new ItemsView<>(model.reels(), model.forms().reel(), lines::of, model.texts().get("reels.none"),
                model.texts().get("reels.remove")).withKept(model::placed);
        getChildren().addAll(add, list, new PasteView(model.paste(), model.texts()));
    }

    void focusFirst() {
        add.focus();
    }
}
