package covewalk.app.walk;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.Parent;
import javafx.scene.layout.StackPane;

/** The place "walk": one walk for each survey that is opened. */
public final class WalkScreen implements Screen {

    private final Desk desk;
    private final Texts texts;
    private final StackPane view = new StackPane();
    private final InvalidationListener onSurvey = observable -> open();
    private WalkView walk;

    public WalkScreen(Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(WalkScreen.class);
        view.getStylesheets().add(WalkScreen.class.getResource("walk.css").toExternalForm());
        desk.surveyProperty().addListener(new WeakInvalidationListener(onSurvey));
        open();
    }

    private void open() {
        OpenSurvey survey = desk.survey();
        walk = survey == null ? null : new WalkView(new WalkModel(desk, survey, texts), desk, texts);
        view.getChildren().clear();
        if (walk != null) {
            view.getChildren().add(walk);
        }
    }

    @Override
    public Place place() {
        return Place.WALK;
    }

    @Override
    public Parent view() {
        return view;
    }

    @Override
    public void shown() {
        if (walk != null) {
            walk.shown();
        }
    }
}
