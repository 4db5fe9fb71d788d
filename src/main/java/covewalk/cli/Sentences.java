package covewalk.cli;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** What the commands themselves say, from {@code sentences.properties} beside this class. */
final class Sentences {

    private static final ResourceBundle.Control NO_DETOUR =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private Sentences() {
    }

    /** The sentence of this key with the details put in for {0}, {1} and so on. */
    static String of(String key, String... details) {
        String pattern = ResourceBundle.getBundle("covewalk.cli.sentences", Locale.ROOT, NO_DETOUR).getString(key);
        return new MessageFormat(pattern, Locale.ROOT).format(details);
    }
}
