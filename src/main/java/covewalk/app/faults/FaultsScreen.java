package covewalk.app.faults;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.text.Texts;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** The place "faults". */
public final class FaultsScreen implements Screen {

    private final StackPane view = new StackPane();

    public FaultsScreen(Desk desk) {
        Texts texts = desk.texts(FaultsScreen.class);
        view.getChildren().add(new Label(texts.get("title")));
    }

    @Override
    public Place place() {
        return Place.FAULTS;
    }

    @Override
    public Parent view() {
        return view;
    }
}
