package covewalk.app.site;

import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.app.desk.Place;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.geometry.Dimension2D;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures of the description to look at, in {@code target/screens}. */
class SitePicturesTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"1024, 600, DARK, en, 100", "1920, 1080, LIGHT, de, 100", "800, 1280, DARK, de, 100", "1024, 600, CONTRAST, en, 200"})
    void everySectionIsDrawn(double width, double height, Theme theme, String language, int percent) {
        Settings settings = new Settings(theme, percent, Locale.forLanguageTag(language), false, false);
        try (Screens screens = Screens.open(settings, new Dimension2D(width, height))) {
            screens.survey(Screens.demo(folder));
            String name = (int) width + "-" + theme.code() + "-" + percent;
            screens.picture("surveys-" + name);
            screens.interact(() -> screens.desk().go(Place.SITE));
            for (int section = 0; section < 5; section++) {
                int chosen = section;
                if (screens.lookup("#site-sections").tryQuery().isEmpty()) { // there is little room
                    screens.clickOn("#site-choose");
                }
                screens.interact(() -> screens.<ListView<?>>find("#site-sections").getSelectionModel().select(chosen));
                assertTrue(Files.exists(screens.picture("site-" + section + "-" + name)));
            }
            screens.interact(() -> screens.desk().go(Place.REELS));
            screens.clickOn("#reel-search").write("2041").push(KeyCode.ENTER);
            assertTrue(Files.exists(screens.picture("reels-" + name)));
        }
    }
}
