package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.desk.Place;
import covewalk.app.desk.Spot;
import covewalk.app.open.OpenSurvey;
import covewalk.verdict.Judgement;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files and sums are beside the screen: while those who read, write and judge are held up, nothing of their work is done, and
 * one can go everywhere all the same. Nothing is timed.
 */
class BesideTheScreenTest {

    @TempDir
    Path folder;
    private Path demo;
    private Screens screens;

    @BeforeEach
    void open() {
        demo = Screens.demo(folder);
        screens = Screens.open();
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private void goEverywhere() {
        for (Place place : Place.values()) {
            screens.interact(() -> screens.desk().go(place));
            screens.rest();
            assertEquals(place, screens.desk().placeProperty().get());
        }
    }

    private void open(Path survey) {
        screens.interact(() -> screens.desk().open(survey, refused -> {
            throw new AssertionError(refused);
        }));
    }

    @Test
    void aSurveyIsReadBesideIt() {
        screens.whileTheDiskIsHeld(() -> {
            open(demo);
            goEverywhere();
            assertNull(screens.desk().survey(), "who reads files is held up");
        });
        screens.until(() -> screens.desk().survey() != null);
    }

    @Test
    void itIsJudgedAndTheWalkIsPlannedBesideIt() {
        screens.whileSumsAreHeld(() -> {
            open(demo);
            screens.until(() -> screens.desk().survey() != null);
            goEverywhere();
            assertNull(screens.desk().survey().judgementProperty().get(), "who judges is held up");
        });
        screens.until(() -> screens.desk().survey().judgementProperty().get() != null);
    }

    @Test
    void aReadingIsWrittenAndJudgedBesideIt() {
        OpenSurvey survey = screens.survey(demo).desk().survey();
        Judgement before = survey.judgementProperty().get();
        int read = survey.log().size();
        screens.whileTheDiskIsHeld(() -> screens.whileSumsAreHeld(() -> {
            screens.interact(() -> DemoDesk.read(screens.desk(), "C1", 4.4, "0.4577", "0.4110"));
            goEverywhere();
            assertEquals(1, survey.waiting().size());
            assertSame(before, survey.judgementProperty().get());
        }));
        screens.until(() -> survey.log().size() == read + 1 && survey.judgementProperty().get() != before);
    }

    @Test
    void aDescriptionIsSavedBesideIt() {
        OpenSurvey survey = screens.survey(demo).desk().survey();
        screens.whileTheDiskIsHeld(() -> {
            screens.interact(() -> assertEquals(List.of(), survey.change(now -> now.with(now.limits().withNeighbourSteps(7)))));
            goEverywhere();
            assertTrue(survey.hasUnwritten());
        });
        screens.until(() -> !survey.hasUnwritten());
    }

    @Test
    void anItemOfThePunchListIsLookedUpBesideIt() {
        screens.survey(demo);
        screens.interact(() -> screens.desk().go(Place.FAULTS));
        screens.whileSumsAreHeld(() -> {
            screens.interact(() -> screens.desk().spotProperty().set(new Spot("C1", 5)));
            goEverywhere();
            assertTrue(screens.from(screens.<Node>find(".shell")).lookup("#punch-title").queryAll().stream()
                    .noneMatch(title -> ((Label) title).getText().startsWith("Item")), "who looks it up is held up");
        });
        screens.interact(() -> screens.desk().go(Place.FAULTS));
        screens.until(() -> screens.<Label>find("#punch-title").getText().startsWith("Item 1"));
    }
}
