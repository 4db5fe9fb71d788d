package covewalk.app.site;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.text.Texts;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** The place "site". */
public final class SiteScreen implements Screen {

    private final StackPane view = new StackPane();

    public SiteScreen(Desk desk) {
        Texts texts = desk.texts(SiteScreen.class);
        view.getChildren().add(new Label(texts.get("title")));
    }

    @Override
    public Place place() {
        return Place.SITE;
    }

    @Override
    public Parent view() {
        return view;
    }
}
