package covewalk.app.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.DriftingSurvey;
import covewalk.app.Screens;
import covewalk.app.desk.Place;
import covewalk.app.desk.Spot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultsScreenTest {

    @TempDir
    Path folder;
    private Screens screens;

    @BeforeEach
    void open() {
        screens = Screens.open().survey(Screens.demo(folder));
        screens.interact(() -> screens.desk().go(Place.FAULTS));
        screens.rest();
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private String title() {
        return screens.<Label>find("#fault-title").getText();
    }

    @Test
    void theKeysGoDownTheListFromTheStart() {
        assertTrue(title().startsWith("Off target, 0.00 m to 5.00 m"), title());
        screens.push(KeyCode.DOWN);
        assertTrue(title().startsWith("Change within a reel at 21.00 m"), title());
        assertEquals(new Spot("C3", 21), screens.desk().spotProperty().get());
    }

    @Test
    void onTheStripTheKeysGoFromJointToJoint() {
        screens.interact(() -> screens.desk().spotProperty().set(new Spot("C1", 2)));
        screens.clickOn("#strip-picture");
        screens.interact(() -> screens.desk().spotProperty().set(new Spot("C1", 2)));
        screens.push(KeyCode.RIGHT);
        assertTrue(title().startsWith("Joint at 5.00 m"), title());
        screens.push(KeyCode.RIGHT);
        assertTrue(title().startsWith("Joint at 10.00 m"), title());
    }

    @Test
    void aTouchListsWhatIsWithinToo() {
        int before = screens.<ListView<?>>find("#faults-list").getItems().size();
        screens.clickOn("#faults-within");
        assertEquals(before + 10, screens.<ListView<?>>find("#faults-list").getItems().size());
    }

    @Test
    void goesToTheWalkFromAFault() {
        screens.clickOn("#fault-walk");
        assertEquals(Place.WALK, screens.desk().placeProperty().get());
        assertEquals(new Spot("C5", 2.5), screens.desk().spotProperty().get());
    }

    @Test
    void theDiagramsTakeThePlaceOfTheFaultWhereTheWindowIsSmall() {
        screens.clickOn("#faults-diagrams");
        assertTrue(screens.find("#diagrams-profile").isVisible());
        assertTrue(screens.lookup("#fault-title").tryQuery().isEmpty());
    }

    @Test
    void aDriftIsTakenOffByOneTouchAndNamedWhereItsVerdictsStand() throws IOException {
        assertFalse(screens.<Label>find("#drift-says").getText().contains("drift"));
        screens.survey(DriftingSurvey.in(folder.resolve("drifting")));
        screens.interact(() -> screens.desk().go(Place.FAULTS));
        screens.picture("faults-drift");
        screens.clickOn("#drift-off");
        screens.until(() -> screens.<Label>find("#strip-cove").getText().endsWith("corrected for drift"));
        assertTrue(screens.<Label>find("#drift-says").getText().startsWith("Corrected for drift: "));
        screens.picture("faults-drift-off");
        screens.interact(() -> screens.desk().go(Place.REPORT));
        screens.until(() -> screens.lookup("#report-counts").tryQuery().isPresent());
        assertTrue(screens.<Label>find("#drift-says").getText().startsWith("Corrected for drift: "));
        screens.picture("report-drift-off");
        screens.interact(() -> screens.desk().go(Place.REELS));
        assertTrue(screens.<Label>find("#drift-says").getText().startsWith("Corrected for drift: "));
        screens.picture("reels-drift-off");
    }

    @Test
    void whatTheVisitBeforeFoundStandsUnderWhatIsFoundNow() throws IOException {
        Path again = Files.move(Screens.demo(Files.createDirectory(folder.resolve("copy"))), folder.resolve("again"));
        Files.writeString(again.resolve("survey.json"), Files.readString(again.resolve("survey.json"))
                .replace("\"follows\": \"\"", "\"follows\": \"reading-rooms\""));
        screens.interact(() -> screens.desk().go(Place.SURVEYS));
        screens.survey(again);
        screens.interact(() -> screens.desk().go(Place.FAULTS));
        screens.until(() -> screens.<Label>find("#fault-before").getText().startsWith("Before (2026-10-12): "));
        screens.picture("faults-before");
    }
}
