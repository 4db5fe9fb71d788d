package covewalk.survey.file.meter;

import covewalk.survey.Reading;
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;

/**
 * The words at the beginning of a reading's note that say from which line of which file it came. They make the log
 * evidence of its own origin, and let an import that was cut short be done again without adding a row twice.
 */
final class SourceTag {

    private SourceTag() {
    }

    /** @param original the file's name in {@code originals/} */
    static String of(String original, int line) {
        return "from " + original + " line " + line;
    }

    /** In front of what else the note says. */
    static String before(String note, String original, int line) {
        return note.isEmpty() ? of(original, line) : of(original, line) + "; " + note;
    }

    /** All tags in a log. */
    static Set<String> in(Collection<Reading> log) {
        Set<String> tags = new HashSet<>();
        for (Reading reading : log) {
            int end = reading.note().indexOf(';');
            tags.add(end < 0 ? reading.note() : reading.note().substring(0, end));
        }
        return tags;
    }
}
