package covewalk.app.faults;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import javafx.scene.Parent;

/** The place "faults". */
public final class FaultsScreen implements Screen {

    private final FaultsModel model;
    private final FaultsView view;

    public FaultsScreen(Desk desk) {
        model = new FaultsModel(desk);
        view = new FaultsView(desk, model);
    }

    @Override
    public Place place() {
        return Place.FAULTS;
    }

    @Override
    public Parent view() {
        return view;
    }

    @Override
    public void shown() {
        model.arrive();
        view.focusList();
    }
}
