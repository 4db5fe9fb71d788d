package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TroubleBarTest {

    @TempDir
    Path folder;
    private Path pulled;
    private Path demo;
    private Screens screens;

    @BeforeEach
    void readWithoutAStick() throws IOException {
        demo = Screens.demo(folder);
        pulled = folder.resolve("pulled");
        screens = Screens.open().survey(demo);
        Files.move(demo, pulled);
        screens.interact(() -> DemoDesk.read(screens.desk(), "C1", 4.4, "0.4577", "0.4110"));
        screens.until(() -> !screens.desk().survey().troubleProperty().get().isEmpty());
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private boolean shown(String query) {
        return screens.find(query).isVisible();
    }

    @Test
    void onADeadDiskTheWindowCanStillBeClosed() {
        assertFalse(shown("#trouble-lose"), "nobody wants to close it yet");
        assertFalse(screens.mayClose());
        screens.until(() -> shown("#trouble-lose"));
        assertFalse(screens.mayClose());
        screens.until(() -> shown("#trouble-lose"));
        assertEquals("The folder of this survey is not there any more. Plug its disk in again, or keep the survey in another place."
                + " 1 reading is held here and is not on disk.", screens.<Label>find("#trouble-says").getText());
    }

    @Test
    void onceAllIsOnDiskTheBarGoesAndTheWindowMayClose() throws IOException {
        assertFalse(screens.mayClose());
        Files.move(pulled, demo);
        screens.clickOn("#trouble-again");
        screens.until(() -> !screens.desk().survey().hasUnwritten());
        assertFalse(shown("#trouble"));
        assertTrue(screens.mayClose());
    }

    @Test
    void whatTheDiskSaysIsSaidInWords() {
        assertEquals("The disk takes nothing at the moment: it is not there. 1 reading is held here and is not on disk.",
                screens.<Label>find("#trouble-says").getText());
    }

    @Test
    void theSurveyIsKeptInAnotherPlace() {
        assertFalse(screens.find("#trouble-place").getParent().isVisible(), "it takes room only for who asks for it");
        screens.clickOn("#trouble-elsewhere");
        screens.interact(() -> screens.<TextField>find("#trouble-place").setText(folder.resolve("kept").toString()));
        screens.picture("trouble-elsewhere");
        screens.clickOn("#trouble-keep-there");
        screens.until(() -> screens.desk().survey().folder().equals(folder.resolve("kept")));
        screens.until(() -> !shown("#trouble"));
        assertEquals(0, screens.desk().survey().waiting().size());
    }

    @Test
    void noFolderIsNamedSoNoneIsWritten() {
        screens.interact(() -> screens.<TextField>find("#trouble-place").setText("  "));
        screens.clickOn("#trouble-elsewhere").clickOn("#trouble-keep-there");
        assertEquals("Name the folder that is to hold the survey.", screens.<Label>find("#trouble-answer").getText());
        assertEquals(demo, screens.desk().survey().folder());
    }
}
