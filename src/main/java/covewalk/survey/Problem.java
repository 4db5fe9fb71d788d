package covewalk.survey;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Something wrong with what was entered, as a value: where, what was found, and whether it is refused or only looks
 * wrong. The words come from a bundle, one sentence for what is wrong and what to do.
 *
 * @param file the file's name without its folder, or empty for something typed on a screen
 * @param line its line, from 1; 0 where there is none
 * @param column the column of a table, or the place in a description such as {@code coves[1].lengthM}; may be empty
 * @param refused whether this cannot be and was not taken; else it was taken, and looks wrong
 * @param key which sentence of the bundle
 * @param details what is put into it, as it was written; one that begins with {@link #DISK} is a key of the bundle itself
 * @param cause what is wrong elsewhere and behind this; told in full, in the same language, behind the last of the details
 */
public record Problem(String file, int line, String column, boolean refused, String key, List<String> details, Optional<Problem> cause) {

    /** How keys of the reasons begin that a disk gives. */
    static final String DISK = "disk.";

    private static final Set<String> COUNTS = Set.of("import.more-rows", "log.same-more");

    public Problem {
        details = List.copyOf(details);
        Objects.requireNonNull(cause, "cause");
    }

    /** What cannot be, at a place that {@link #at} fills in. */
    public static Problem refusal(String key, Object... details) {
        return new Problem("", 0, "", true, key, texts(details), Optional.empty());
    }

    /** What was taken and looks wrong, at a place that {@link #at} fills in. */
    public static Problem warning(String key, Object... details) {
        return new Problem("", 0, "", false, key, texts(details), Optional.empty());
    }

    public Problem at(String where, int atLine, String atColumn) {
        return new Problem(where, atLine, atColumn, refused, key, details, cause);
    }

    public Problem inColumn(String atColumn) {
        return new Problem(file, line, atColumn, refused, key, details, cause);
    }

    public Problem because(Problem elsewhere) {
        return new Problem(file, line, column, refused, key, details, Optional.of(elsewhere));
    }

    /** Whether it only counts how often the problem told just before it was found. */
    public boolean countsTheOneBefore() {
        return COUNTS.contains(key);
    }

    /** The sentence alone: what is wrong, and what to do. */
    public String sentence(Locale locale) {
        return ProblemWords.sentence(this, locale);
    }

    /** The first detail as the sentence says it, for one that is told in other words; empty where there is none. */
    public String firstDetail(Locale locale) {
        return details.isEmpty() ? "" : ProblemWords.firstDetail(this, locale);
    }

    /** {@code file:line: column: sentence}, leaving out what is unknown. */
    public String inFull(Locale locale) {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line);
        }
        if (text.length() > 0) {
            text.append(": ");
        }
        if (!column.isEmpty()) {
            text.append(column).append(": ");
        }
        return text.append(sentence(locale)).toString();
    }

    private static List<String> texts(Object... details) {
        return Arrays.stream(details).map(String::valueOf).toList();
    }
}
