package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A survey that another program spoils between the first look and the lock. */
class FailedOpeningTest {

    @TempDir
    Path folder;
    private Path demo;
    private Screens screens;
    private final AtomicReference<String> spoilt = new AtomicReference<>("{ \"format\": ");

    @BeforeEach
    void open() {
        demo = Screens.demo(folder);
        screens = Screens.open(() -> {
            if (spoilt.get() != null) {
                write(spoilt.get());
            }
        });
    }

    @AfterEach
    void close() {
        screens.close();
    }

    private void write(String description) {
        try {
            Files.writeString(demo.resolve("survey.json"), description);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void ask() {
        screens.interact(() -> screens.<TextField>find("#open-folder").setText(demo.toString()));
        screens.clickOn("#open-folder").push(KeyCode.ENTER);
    }

    @Test
    void whatCouldNotBeOpenedIsNotHeldLocked() throws IOException {
        String sound = Files.readString(demo.resolve("survey.json"));
        ask();
        screens.until(() -> screens.find("#open-trouble").isVisible());
        assertTrue(screens.<Label>find("#open-trouble").getText().startsWith("survey.json:1: "), screens.<Label>find("#open-trouble").getText());
        assertNull(screens.desk().survey());
        assertFalse(Files.exists(demo.resolve("lock-holder")));
        spoilt.set(null);
        write(sound);
        ask();
        screens.until(() -> screens.desk().survey() != null);
        assertEquals(List.of(), screens.desk().survey().troubleProperty().get(), "it is not locked by this very window");
    }
}
