package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.javafx.application.ParametersImpl;
import covewalk.app.desk.MemoryFile;
import covewalk.app.desk.Place;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The window as {@code covewalk FOLDER} opens it, from its start to its end. */
class FieldAppTest {

    @TempDir
    Path folder;
    private Path demo;
    private Stage stage;
    private FieldApp app;
    private final FxRobot robot = new FxRobot();

    @BeforeEach
    void copy() throws TimeoutException {
        demo = Screens.demo(folder);
        stage = FxToolkit.registerPrimaryStage();
    }

    @AfterEach
    void close() throws TimeoutException {
        exit();
        FxToolkit.cleanupStages();
    }

    /** On the screen's thread, as a launch does. */
    private void start(Path survey) throws TimeoutException {
        FxToolkit.setupFixture(() -> {
            app = new FieldApp(new MemoryFile(folder.resolve("memory/app.properties")));
            ParametersImpl.registerParameters(app, new ParametersImpl(List.of(survey.toString())));
            app.start(stage);
        });
    }

    private void exit() throws TimeoutException {
        if (app != null) {
            FxToolkit.cleanupApplication(app);
            app = null;
        }
    }

    private void until(Callable<Boolean> holds) throws TimeoutException {
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(holds).get());
        WaitForAsyncUtils.waitForFxEvents();
    }

    private boolean isAt(Place place) {
        return robot.lookup("#place-" + place.code()).<ToggleButton>query().isSelected();
    }

    /** Why the lock could not be taken by another program; nothing where it could. */
    private List<String> lockedFor(String program) throws IOException {
        Outcome<FolderLock> lock = FolderLock.take(demo, Holder.here(program, Screens.EVENING));
        if (lock.value().isPresent()) {
            lock.value().get().close();
        }
        return lock.problems().stream().map(Problem::key).toList();
    }

    @Test
    void theSurveyNamedIsOpenedAndItsLockIsGivenBackOnExit() throws IOException, TimeoutException {
        start(demo);
        until(() -> stage.getTitle().startsWith("Quillbrook Reading Rooms"));
        assertTrue(isAt(Place.FAULTS));
        assertEquals(List.of("lock.held"), lockedFor("another program"));
        assertTrue(Files.exists(demo.resolve("lock-holder")));
        exit();
        assertEquals(List.of(), lockedFor("another program"));
        assertFalse(Files.exists(demo.resolve("lock-holder")), "who looks at it now must not read that somebody writes in it");
    }

    @Test
    void ofADamagedSurveyNamedAllThatIsWrongIsSaidWhereAnotherCanBeChosen() throws IOException, TimeoutException {
        Path description = demo.resolve("survey.json");
        String sound = Files.readString(description);
        Files.writeString(description, sound.substring(0, sound.length() / 2));
        start(demo);
        until(() -> robot.lookup("#open-trouble").tryQuery().isPresent() && robot.lookup("#open-trouble").query().isVisible());
        assertTrue(isAt(Place.SURVEYS));
        String said = robot.lookup("#open-trouble").<Label>query().getText();
        assertTrue(said.matches("survey\\.json:[0-9]+: .*ends too early.*"), said);
        assertEquals("Covewalk", stage.getTitle());
        assertEquals(sound.substring(0, sound.length() / 2), Files.readString(description), "it stays as it is");
        assertEquals(List.of(), lockedFor("another program"));
    }
}
