package covewalk.app.report;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import javafx.scene.Parent;

/** The place "report". */
public final class ReportScreen implements Screen {

    private final ReportModel model;
    private final ReportView view;

    public ReportScreen(Desk desk) {
        model = new ReportModel(desk);
        view = new ReportView(desk, model);
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
        model.arrive();
        view.focusWrite();
    }
}
