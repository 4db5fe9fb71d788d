package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Place;
import java.nio.file.Path;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShellTest {

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

    @Test
    void withoutASurveyOnlyTheSurveysCanBeGoneTo() {
        assertFalse(screens.<ToggleButton>find("#place-surveys").isDisabled());
        assertTrue(screens.<ToggleButton>find("#place-walk").isDisabled());
    }

    @Test
    void everyPlaceIsReachedByATouchAndByKeys() {
        screens.survey(Screens.demo(folder));
        for (Place place : Place.values()) {
            screens.clickOn("#place-" + place.code());
            assertEquals(place, screens.desk().placeProperty().get());
        }
        for (Place place : Place.values()) {
            screens.push(KeyCode.CONTROL, KeyCode.valueOf("DIGIT" + (place.ordinal() + 1)));
            assertEquals(place, screens.desk().placeProperty().get());
        }
        screens.picture("shell");
    }
}
