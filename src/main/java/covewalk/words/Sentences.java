package covewalk.words;

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
        return fill(bundle.getString(key), details);
    }

    /** What the details say is never read as a pattern itself: a cove may well be called "{0}". */
    private static String fill(String pattern, List<String> details) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < pattern.length(); i++) {
            if (isSlot(pattern, i)) {
                text.append(details.get(pattern.charAt(i + 1) - '0'));
                i += 2;
            } else {
                text.append(pattern.charAt(i));
            }
        }
        return text.toString();
    }

    private static boolean isSlot(String pattern, int i) {
        return pattern.charAt(i) == '{' && i + 2 < pattern.length() && pattern.charAt(i + 2) == '}'
                && Character.isDigit(pattern.charAt(i + 1));
    }
}
