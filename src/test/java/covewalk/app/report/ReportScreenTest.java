package covewalk.app.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Screens;
import covewalk.app.desk.Place;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportScreenTest {

    @TempDir
    Path folder;
    private Screens screens;

    @BeforeEach
    void open() {
        screens = Screens.open().survey(Screens.demo(folder));
        screens.interact(() -> screens.desk().go(Place.REPORT));
        screens.rest();
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private String text(String id) {
        return screens.<Label>find(id).getText();
    }

    @Test
    void aDossierIsWrittenOnceItsReelIsNamed() {
        screens.clickOn("#report-for-warranty");
        assertTrue(screens.<Button>find("#report-write").isDisabled());
        assertEquals("Name the reel for the dossier.", text("#report-why-not"));
        screens.clickOn("#report-reel").write("2631-W-2041");
        assertEquals("The dossier is about R2.", text("#report-reel-says"));
        screens.picture("report-dossier");
        screens.interact(() -> screens.<Button>find("#report-write").fire());
        screens.until(() -> screens.lookup("#report-open-warranty-r2-pdf").tryQuery().isPresent());
        assertTrue(Files.exists(folder.resolve("reading-rooms-report").resolve("warranty-R2.pdf")));
        screens.picture("report-dossier-written");
    }

    @Test
    void forEverybodyNoReelIsAskedFor() {
        assertFalse(screens.find("#report-reel").getParent().isVisible());
        assertFalse(screens.<Button>find("#report-write").isDisabled());
    }

    @Test
    void saysWhetherTheSurveyIsWhatWasSealed() {
        screens.interact(() -> screens.find("#seals-code").requestFocus());
        screens.push(KeyCode.ENTER);
        screens.until(() -> screens.<VBox>find("#seals-answer").getChildren().size() > 1);
        assertTrue(((Label) screens.<VBox>find("#seals-answer").getChildren().get(0)).getText().startsWith("Unchanged since seal "));
        screens.picture("report-seals");
    }
}
