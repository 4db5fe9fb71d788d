package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The survey is open elsewhere when it is opened in this window, and both change its limit. */
class TwoWindowsTest {

    private static final double THEIRS = 4;
    private static final double OURS = 7;

    @TempDir
    Path folder;
    private Path demo;
    private Screens screens;
    private OpenSurvey elsewhere;

    @BeforeEach
    void changeItHereAndThere() {
        demo = Screens.demo(folder);
        List<OpenSurvey> opened = new ArrayList<>();
        Workers atOnce = new Workers(Runnable::run, Runnable::run, Runnable::run);
        new Opener(atOnce, () -> Holder.here("covewalk", Screens.EVENING)).open(demo, told -> opened.add(told.value().orElseThrow()));
        elsewhere = opened.get(0);
        screens = Screens.open().survey(demo);
        assertTrue(shown("#trouble-again"));
        limit(elsewhere, THEIRS);
        screens.interact(() -> limit(screens.desk().survey(), OURS));
        elsewhere.close();
        screens.clickOn("#trouble-again");
        screens.until(() -> shown("#trouble-theirs"));
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private static void limit(OpenSurvey survey, double steps) {
        assertEquals(List.of(), survey.change(now -> now.with(now.limits().withNeighbourSteps(steps))));
    }

    private boolean shown(String query) {
        return screens.find(query).isVisible();
    }

    private double onDisk() throws IOException {
        return SurveyFolder.at(demo).read().survey().orElseThrow().limits().neighbourSteps();
    }

    @Test
    void thePersonChoosesInThePage() throws IOException {
        screens.picture("trouble-two-descriptions");
        assertEquals("Another program changed the description of this survey meanwhile. Take that one, or keep the one shown here; the other one"
                + " then lies in originals. Changes of the description are held here and are not on disk.",
                screens.<Label>find("#trouble-says").getText());
        assertFalse(shown("#trouble-again"));
        assertFalse(screens.mayClose());
        assertEquals(THEIRS, onDisk());
        screens.clickOn("#trouble-theirs");
        screens.until(() -> !shown("#trouble"));
        assertEquals(THEIRS, screens.desk().survey().survey().limits().neighbourSteps());
        assertTrue(Files.exists(demo.resolve("originals/survey.json")));
        assertTrue(screens.mayClose());
    }

    @Test
    void whileTheDiskIsAwayTheChoiceWaitsAndTheButtonsFitTheWords() throws IOException {
        Path pulled = folder.resolve("pulled");
        Files.move(demo, pulled);
        screens.interact(() -> DemoDesk.read(screens.desk(), "C1", 4.4, "0.4577", "0.4110"));
        screens.until(() -> shown("#trouble-again"));
        assertFalse(shown("#trouble-theirs"));
        assertFalse(shown("#trouble-ours"));
        assertTrue(screens.<Label>find("#trouble-says").getText().startsWith("The folder of this survey is not there any more."),
                screens.<Label>find("#trouble-says").getText());
        Files.move(pulled, demo);
        screens.clickOn("#trouble-again");
        screens.until(() -> shown("#trouble-theirs"));
        assertFalse(shown("#trouble-again"));
        assertEquals(0, screens.desk().survey().waiting().size(), "the reading does not wait for the choice");
        screens.clickOn("#trouble-ours");
        screens.until(() -> !shown("#trouble"));
        assertEquals(OURS, onDisk());
    }

    @Test
    void onesOwnCanBeKept() throws IOException {
        screens.clickOn("#trouble-ours");
        screens.until(() -> !shown("#trouble"));
        assertEquals(OURS, onDisk());
        assertTrue(Files.exists(demo.resolve("originals/survey.json")));
    }
}
