package covewalk.survey.file.convert;

import java.util.Locale;
import java.util.Objects;

/**
 * How a table is converted.
 *
 * @param digits significant digits of what is added, 1 to 12
 * @param locale the language of the problems
 */
public record ConvertOptions(int digits, Locale locale) {

    /** Six digits, problems in English. */
    public static final ConvertOptions USUAL = new ConvertOptions(6, Locale.ROOT);

    /** The most digits that can be asked for: the sums are exact to twelve decimals. */
    public static final int MOST_DIGITS = SignificantDigits.MOST;

    public ConvertOptions {
        Objects.requireNonNull(locale, "locale");
        if (digits < 1 || digits > MOST_DIGITS) {
            throw new IllegalArgumentException(digits + " significant digits: from 1 to " + MOST_DIGITS + " can be written");
        }
    }

    public ConvertOptions withDigits(int others) {
        return new ConvertOptions(others, locale);
    }
}
