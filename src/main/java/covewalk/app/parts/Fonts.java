package covewalk.app.parts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import javafx.scene.text.Font;

/** The one family of type, which comes with the program: machines on sites may have none. */
public final class Fonts {

    public static final String FAMILY = "Lato";

    private Fonts() {
    }

    /** Once, before the first window. */
    public static void load() {
        for (String file : List.of("Lato-Regular.ttf", "Lato-Bold.ttf")) {
            try (InputStream in = Fonts.class.getResourceAsStream("/covewalk/fonts/" + file)) {
                Font.loadFont(in, 12);
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
    }
}
