package covewalk.words;

import covewalk.survey.Slots;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** The sentences of one language, from {@code sentences.properties}. */
final class Sentences {

    /** Without it a missing language would fall back to whatever the machine speaks, not to English. */
    private static final ResourceBundle.Control NO_DETOUR =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle bundle;

    Sentences(Locale locale) {
        bundle = ResourceBundle.getBundle("covewalk.words.sentences", locale, NO_DETOUR);
    }

    /** The sentence of {@code key} with details put in for {0}, {1} and so on. */
    String text(String key, List<String> details) {
        return Slots.fill(bundle.getString(key), details);
    }
}
