package covewalk.app.surveys;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import java.nio.file.Path;
import javafx.scene.Parent;

/** The place where surveys are begun, opened and looked over; where a person starts. */
public final class SurveysScreen implements Screen {

    private final SurveysModel model;
    private final SurveysView view;

    public SurveysScreen(Desk desk) {
        model = new SurveysModel(desk, Path.of(System.getProperty("user.home")));
        view = new SurveysView(model);
    }

    @Override
    public Place place() {
        return Place.SURVEYS;
    }

    @Override
    public Parent view() {
        return view;
    }

    @Override
    public void shown() {
        model.shown();
        view.focusFirst();
    }
}
