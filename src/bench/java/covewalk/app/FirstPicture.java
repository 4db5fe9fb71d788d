package covewalk.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * How long the window takes from the command to its first pictures: starts the command on a screen of its own (Xvfb), looks
 * at it every 20 ms and prints when it changed. The first change is the window, the next its contents; a blinking
 * cursor goes on for ever.
 */
public final class FirstPicture {

    private static final String SCREEN = ":87";
    private static final int LOOKED_AT_MS = 6000;
    private static final int EVERY_MS = 20;

    private FirstPicture() {
    }

    /** @param args the command, word by word */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("first-picture");
        Process screen = quiet(List.of("Xvfb", SCREEN, "-screen", "0", "1280x800x24", "-fbdir", folder.toString())).start();
        try {
            TimeUnit.SECONDS.sleep(1);
            ProcessBuilder command = quiet(List.of(args));
            command.environment().put("DISPLAY", SCREEN);
            System.out.println("changed after ms: " + changes(folder.resolve("Xvfb_screen0"), command));
        } finally {
            screen.destroy();
            screen.waitFor();
            Files.deleteIfExists(folder.resolve("Xvfb_screen0"));
            Files.delete(folder);
        }
    }

    private static List<Long> changes(Path picture, ProcessBuilder command) throws IOException, InterruptedException {
        List<Long> changes = new ArrayList<>();
        byte[] last = Files.readAllBytes(picture);
        long start = System.nanoTime();
        Process window = command.start();
        try {
            for (long ms = 0; ms < LOOKED_AT_MS; ms = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start)) {
                byte[] now = Files.readAllBytes(picture);
                if (!Arrays.equals(last, now)) {
                    changes.add(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start));
                    last = now;
                }
                TimeUnit.MILLISECONDS.sleep(EVERY_MS);
            }
        } finally {
            window.destroy();
            window.waitFor();
        }
        return changes;
    }

    private static ProcessBuilder quiet(List<String> command) {
        return new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
    }
}
