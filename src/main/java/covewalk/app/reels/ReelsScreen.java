package covewalk.app.reels;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.strip.DriftView;
import javafx.scene.Parent;

/** The place where reels are looked up: their labels, where they lie, and what was measured of them. */
public final class ReelsScreen implements Screen {

    private final ReelsView view;

    public ReelsScreen(Desk desk) {
        view = new ReelsView(new ReelsModel(desk), new DriftView(desk));
    }

    @Override
    public Place place() {
        return Place.REELS;
    }

    @Override
    public Parent view() {
        return view;
    }

    @Override
    public void shown() {
        view.focusFirst();
    }
}
