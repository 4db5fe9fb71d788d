package covewalk.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A language that has all sentences. Chosen by whoever asks, never by what the machine speaks. */
public enum Language {
    ENGLISH(Locale.ENGLISH), GERMAN(Locale.GERMAN);

    private final Locale locale;

    Language(Locale locale) {
        this.locale = locale;
    }

    /** Two letters of ISO 639-1, as in "de". */
    public String code() {
        return locale.getLanguage();
    }

    public Words words() {
        return new Words(locale);
    }

    /** The language of a code in small letters; empty where it is none of these. */
    public static Optional<Language> of(String code) {
        return Arrays.stream(values()).filter(language -> language.code().equals(code)).findFirst();
    }
}
