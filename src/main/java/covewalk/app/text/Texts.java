package covewalk.app.text;

import covewalk.survey.Slots;
import covewalk.words.Numbers;
import covewalk.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The texts of one package of screens, in one language; English where a language has no bundle of its own. */
public final class Texts {

    private static final ResourceBundle.Control NO_DETOUR =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final ResourceBundle bundle;
    private final Words words;

    /** @param owner a class of the package that the texts belong to */
    public Texts(Class<?> owner, Locale locale) {
        this(owner.getPackageName(), new Words(locale));
    }

    private Texts(String owner, Words words) {
        this.words = words;
        bundle = ResourceBundle.getBundle(owner + ".texts", words.locale(), NO_DETOUR);
    }

    /** The texts of another package in the same language. */
    public Texts of(Class<?> owner) {
        return new Texts(owner.getPackageName(), words);
    }

    /**
     * The text of a dotted key.
     *
     * @param details put in for {0}, {1} and so on; what they say is never read as a pattern itself
     * @throws MissingResourceException where there is no such text
     */
    public String get(String key, String... details) {
        return Slots.fill(bundle.getString(key), List.of(details));
    }

    /** The text of {@code key.one} for 1, else of {@code key.more}, with the count put in for {0}. */
    public String count(String key, long count) {
        return get(key + (count == 1 ? ".one" : ".more"), numbers().fixed(count, 0));
    }

    /** Verdicts, faults and cautions in the same language. */
    public Words words() {
        return words;
    }

    public Numbers numbers() {
        return words.numbers();
    }

    public Locale locale() {
        return words.locale();
    }
}
