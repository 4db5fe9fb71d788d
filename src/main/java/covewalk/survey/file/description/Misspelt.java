package covewalk.survey.file.description;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Fields that nobody here knows and that look like one that is missing: others are somebody's own and are left alone. */
final class Misspelt {

    /** Letters that may be wrong, missing or too many. */
    private static final int MOST_WRONG = 2;
    private static final int SHORTEST = 4;

    private Misspelt() {
    }

    /** The field that is meant: one of the known ones, which the object lacks; empty where none is like it. */
    static Optional<String> meant(String name, Set<String> known, JsonNode object) {
        return known.stream().filter(other -> isLike(name, other) && !object.has(other)).sorted().findFirst();
    }

    private static boolean isLike(String name, String known) {
        return name.length() >= SHORTEST
                && wrong(name.toLowerCase(Locale.ROOT), known.toLowerCase(Locale.ROOT)) <= Math.min(MOST_WRONG, known.length() / 3);
    }

    /** Levenshtein's distance: the fewest letters to put in, take out or change. */
    private static int wrong(String one, String other) {
        int[] before = new int[other.length() + 1];
        for (int j = 0; j < before.length; j++) {
            before[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] now = new int[before.length];
            now[0] = i;
            for (int j = 1; j < now.length; j++) {
                int change = before[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(change, 1 + Math.min(before[j], now[j - 1]));
            }
            before = now;
        }
        return before[other.length()];
    }
}
