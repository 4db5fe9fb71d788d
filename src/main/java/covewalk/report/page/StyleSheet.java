package covewalk.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheets that lie beside the pages. */
final class StyleSheet {

    private StyleSheet() {
    }

    static String read(String name) {
        try (InputStream in = StyleSheet.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
