package covewalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartTest {

    @TempDir
    Path folder;

    @Test
    void withoutAScreenThereIsNoWindow() throws IOException, InterruptedException {
        assumeTrue(System.getProperty("os.name").startsWith("Linux"), "other systems always have a screen");
        ProcessBuilder alone = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp", System.getProperty("java.class.path"), "covewalk.Main").redirectErrorStream(true).directory(folder.toFile());
        alone.environment().keySet().removeAll(List.of("DISPLAY", "WAYLAND_DISPLAY"));
        Process process = alone.start();
        String said = new String(process.getInputStream().readAllBytes());
        assertEquals(true, process.waitFor(60, TimeUnit.SECONDS));
        assertEquals(2, process.exitValue());
        assertEquals("There is no screen here to open the field app on. These commands need none.", said.lines().findFirst().orElse(""));
    }

    @Test
    void aDisplayIsAScreen() {
        assertEquals(true, Start.hasScreen(Map.of("DISPLAY", ":0"), "Linux"));
        assertEquals(true, Start.hasScreen(Map.of(), "Windows 11"));
    }
}
