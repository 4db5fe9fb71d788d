package covewalk.app.reels;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.text.Texts;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** The place "reels". */
public final class ReelsScreen implements Screen {

    private final StackPane view = new StackPane();

    public ReelsScreen(Desk desk) {
        Texts texts = desk.texts(ReelsScreen.class);
        view.getChildren().add(new Label(texts.get("title")));
    }

    @Override
    public Place place() {
        return Place.REELS;
    }

    @Override
    public Parent view() {
        return view;
    }
}
