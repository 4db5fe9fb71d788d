package covewalk.app.site;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import javafx.scene.Parent;

/** The place where the survey is described: site, visit, meter, limits, reels and coves. */
public final class SiteScreen implements Screen {

    private final SiteView view;

    public SiteScreen(Desk desk) {
        view = new SiteView(new SiteModel(desk));
    }

    @Override
    public Place place() {
        return Place.SITE;
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
