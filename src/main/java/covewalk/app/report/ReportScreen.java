package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import javafx.scene.Parent;

/** The place "report". */
public final class ReportScreen implements Screen {

    private final ReportView view;

    public ReportScreen(Desk desk) {
        view = new ReportView(desk, new ReportModel(desk));
    }

    @Override
    public Place place() {
        return Place.REPORT;
    }

    @Override
    public Parent view() {
        return view;
    }

    @Override
    public void shown() {
        view.focusWrite();
    }
}
