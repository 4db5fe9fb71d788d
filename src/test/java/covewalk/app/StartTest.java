package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartTest {

    @TempDir
    Path folder;

    private static final String NO_SCREEN = "There is no screen here to open the field app on. These commands need none.";

    @Test
    void withoutAScreenThereIsNoWindow() throws IOException, InterruptedException {
        assertEquals(NO_SCREEN, firstLineOf());
    }

    @Test
    void theFolderOfASurveyWouldOpenItInTheWindow() throws IOException, InterruptedException {
        Files.createDirectories(folder.resolve("evening"));
        Files.createFile(folder.resolve("evening/survey.json"));
        assertEquals(NO_SCREEN, firstLineOf("evening"));
    }

    @Test
    void aFolderWithTheNameOfACommandDoesNotHideTheCommand() throws IOException, InterruptedException {
        Files.createDirectories(folder.resolve("plan"));
        assertEquals("covewalk plan: SURVEY is missing: the survey's folder.", firstLineOf("plan"));
    }

    private String firstLineOf(String... arguments) throws IOException, InterruptedException {
        assumeTrue(System.getProperty("os.name").startsWith("Linux"), "other systems always have a screen");
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp", System.getProperty("java.class.path"), "covewalk.Main"));
        command.addAll(List.of(arguments));
        ProcessBuilder alone = new ProcessBuilder(command).redirectErrorStream(true).directory(folder.toFile());
        alone.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
        Process process = alone.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(true, process.waitFor(60, TimeUnit.SECONDS));
        assertEquals(2, process.exitValue());
        return said.lines().findFirst().orElse("");
    }

    @Test
    void aDisplayIsAScreen() {
        assertEquals(true, Start.hasScreen(Map.of("DISPLAY", ":0"), "Linux"));
        assertEquals(true, Start.hasScreen(Map.of(), "Windows 11"));
    }
}
