package covewalk.report.data;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Files kept as they should come out, beside this class. They were read through by a person when they were made, and
 * are compared byte by byte. What came out instead lies under target/golden: compare it line by line, and copy it over
 * the kept file only where every change is meant.
 */
public final class Golden {

    private Golden() {
    }

    public static void assertSame(String name, String written) {
        try (InputStream in = Golden.class.getResourceAsStream("/covewalk/report/" + name)) {
            String kept = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            if (!kept.equals(written)) {
                Path came = Files.createDirectories(Path.of("target", "golden")).resolve(name);
                Files.writeString(came, written);
            }
            assertEquals(kept, written, name);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }
}
