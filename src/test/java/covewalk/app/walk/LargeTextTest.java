package covewalk.app.walk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.app.desk.Place;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import java.nio.file.Path;
import java.util.Locale;
import javafx.geometry.Bounds;
import javafx.geometry.Dimension2D;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The walk with larger text on the smallest tablets, in the language with the longer words, and with the longest question. */
class LargeTextTest {

    /** 15 mm at 96 dpi. */
    private static final double GLOVE_PX = 57;

    @TempDir
    Path folder;
    private Screens screens;

    @ParameterizedTest
    @CsvSource({"1024, 600, 100", "1024, 600, 150", "1024, 600, 200", "600, 1024, 100", "600, 1024, 150", "600, 1024, 200", "800, 480, 200"})
    void theStripStaysInSightAndNothingIsCutOff(double width, double height, int percent) {
        Settings large = new Settings(Theme.DARK, percent, Locale.GERMAN, false, false);
        try (Screens opened = Screens.open(large, new Dimension2D(width, height))) {
            screens = opened;
            screens.survey(NewSurvey.in(folder));
            screens.interact(() -> screens.desk().go(Place.WALK));
            screens.until(() -> screens.<Labeled>find("#walk-where").getText().startsWith("Voute C1"));
            type("45804103");
            screens.until(() -> screens.desk().survey().log().size() == 1);
            type("45814103");
            screens.until(() -> screens.desk().survey().log().size() == 2 && !screens.desk().survey().judgingProperty().get());
            type("41034580");
            screens.until(() -> screens.find("#walk-question").isVisible());
            screens.picture(String.format(Locale.ROOT, "walk-large-%.0fx%.0f-%d", width, height, percent));
            everythingHasItsPlace(width, height);
        }
    }

    private void type(String digits) {
        for (char digit : digits.toCharArray()) {
            screens.write(digit);
            screens.rest();
        }
        screens.push(KeyCode.ENTER);
        screens.rest();
    }

    private void everythingHasItsPlace(double width, double height) {
        Bounds strip = bounds("walk-strip");
        assertTrue(screens.find("#walk-strip").isVisible() && strip.getHeight() > 50 && strip.getMinY() >= 0, "the strip: " + strip);
        assertTrue(bounds("walk-where").getMinY() >= strip.getMaxY() - 0.5, "below the strip: " + bounds("walk-where") + strip);
        double below = Math.min(bounds("walk-back").getMinY(), width > height ? height : bounds("pad-7").getMinY());
        assertTrue(bounds("walk-take-back").getMaxY() <= below + 0.5, "above what is below: " + bounds("walk-take-back") + " " + below);
        assertTrue(bounds("walk-back").getMaxY() <= height, "the actions: " + bounds("walk-back"));
        Bounds key = bounds("pad-7");
        assertTrue(Math.min(key.getWidth(), key.getHeight()) >= GLOVE_PX, "a key: " + key);
        assertTrue(bounds("pad-enter").getMaxX() <= width, "the pad: " + bounds("pad-enter"));
        for (Place place : Place.values()) {
            Bounds button = bounds("place-" + place.code());
            assertTrue(button.getMaxX() <= width && button.getMaxY() <= height, place + ": " + button);
        }
    }

    /** As laid out: the ring of the focus lies outside. */
    private Bounds bounds(String id) {
        Node node = screens.find("#" + id);
        return node.localToScene(node.getLayoutBounds());
    }
}
