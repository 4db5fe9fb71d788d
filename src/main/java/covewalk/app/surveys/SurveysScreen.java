package covewalk.app.surveys;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.text.Texts;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** The place "surveys". */
public final class SurveysScreen implements Screen {

    private final StackPane view = new StackPane();

    public SurveysScreen(Desk desk) {
        Texts texts = desk.texts(SurveysScreen.class);
        view.getChildren().add(new Label(texts.get("title")));
    }

    @Override
    public Place place() {
        return Place.SURVEYS;
    }

    @Override
    public Parent view() {
        return view;
    }
}
