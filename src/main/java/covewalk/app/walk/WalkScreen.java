package covewalk.app.walk;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.text.Texts;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** The place "walk". */
public final class WalkScreen implements Screen {

    private final StackPane view = new StackPane();

    public WalkScreen(Desk desk) {
        Texts texts = desk.texts(WalkScreen.class);
        view.getChildren().add(new Label(texts.get("title")));
    }

    @Override
    public Place place() {
        return Place.WALK;
    }

    @Override
    public Parent view() {
        return view;
    }
}
