package covewalk.app.faults;

import covewalk.app.Screens;
import covewalk.app.desk.Place;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import java.nio.file.Path;
import java.util.Locale;
import javafx.geometry.Dimension2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultsScreenTest {
    @TempDir
    Path folder;

    @Test
    void pictures() {
        try (Screens screens = Screens.open(new Settings(Theme.DARK, 100, Locale.ENGLISH, false, false), new Dimension2D(1024, 600))) {
            screens.survey(Screens.demo(folder));
            screens.interact(() -> screens.desk().go(Place.FAULTS));
            screens.picture("c3-faults-1024");
            screens.size(1920, 1080);
            screens.picture("c3-faults-1920");
            screens.size(800, 1280);
            screens.picture("c3-faults-800");
        }
    }
}
