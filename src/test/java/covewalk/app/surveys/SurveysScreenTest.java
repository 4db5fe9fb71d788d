package covewalk.app.surveys;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.app.desk.Place;
import covewalk.app.desk.Theme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SurveysScreenTest {

    @TempDir
    Path folder;
    private Screens screens;

    @BeforeEach
    void open() {
        screens = Screens.open();
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private void fill(String field, Path text) {
        screens.interact(() -> screens.<TextField>find(field).setText(text.toString()));
    }

    /** By the keyboard, wherever the page would have to be scrolled to for a touch. */
    private void press(String button) {
        screens.interact(() -> screens.find(button).requestFocus());
        screens.push(KeyCode.SPACE);
        screens.rest();
    }

    @Test
    void aFolderIsTypedAndItsSurveyIsGoneToAndListed() {
        fill("#open-folder", Screens.demo(folder));
        screens.clickOn("#open-folder").push(KeyCode.ENTER);
        screens.until(() -> screens.desk().placeProperty().get() == Place.SITE);
        screens.interact(() -> screens.desk().go(Place.SURVEYS));
        screens.until(() -> screens.<Label>find("#recent-0-says").getText().contains("beyond the limit"));
        press("#recent-0");
        assertEquals(Place.SITE, screens.desk().placeProperty().get());
    }

    @Test
    void whatIsWrongWithAFolderStandsInThePage() throws Exception {
        Path demo = Screens.demo(folder);
        Files.writeString(demo.resolve("survey.json"), "{ \"format\": ");
        fill("#open-folder", demo);
        screens.clickOn("#open-folder").push(KeyCode.ENTER);
        screens.until(() -> screens.<Node>find("#open-trouble").isVisible());
        assertTrue(screens.<Label>find("#open-trouble").getText().startsWith("survey.json:1: "), screens.<Label>find("#open-trouble").getText());
        assertEquals(Place.SURVEYS, screens.desk().placeProperty().get());
        screens.picture("surveys-trouble");
    }

    @Test
    void whatIsChosenForThisComputerShowsAtOnce() {
        press("#theme-light");
        press("#text-larger");
        press("#lengths-feet");
        press("#language-de");
        assertEquals(Theme.LIGHT, screens.desk().settings().theme());
        assertEquals(110, screens.desk().settings().textPercent());
        assertEquals(Locale.GERMAN, screens.desk().settings().language());
        assertTrue(screens.desk().settings().feet());
        screens.until(() -> screens.lookup("Begehung beginnen").tryQuery().isPresent());
        for (int i = 0; i < 12; i++) {
            press("#text-larger");
        }
        assertEquals(200, screens.desk().settings().textPercent());
        assertTrue(screens.find("#text-larger").isDisabled());
    }
}
