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

    public ConvertOptions {
        Objects.requireNonNull(locale, "locale");
        if (digits < 1 || digits > SignificantDigits.MOST) {
            throw new IllegalArgumentException(digits + " significant digits: from 1 to " + SignificantDigits.MOST + " can be written");
        }
    }
}
