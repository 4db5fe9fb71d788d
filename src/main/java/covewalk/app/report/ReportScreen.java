package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.text.Texts;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;

/** The place "report". */
public final class ReportScreen implements Screen {

    private final StackPane view = new StackPane();

    public ReportScreen(Desk desk) {
        Texts texts = desk.texts(ReportScreen.class);
        view.getChildren().add(new Label(texts.get("title")));
    }

    @Override
    public Place place() {
        return Place.REPORT;
    }

    @Override
    public Parent view() {
        return view;
    }
}
