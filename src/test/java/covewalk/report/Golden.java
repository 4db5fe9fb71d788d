package covewalk.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/**
 * Files kept as they should come out, beside this class. They were read through by a person when they were made, and
 * are compared byte by byte; make them anew by hand only.
 */
final class Golden {

    private Golden() {
    }

    static void assertSame(String name, String written) {
        try (InputStream in = Golden.class.getResourceAsStream(name)) {
            assertEquals(new String(in.readAllBytes(), StandardCharsets.UTF_8), written, name);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
    }
}
