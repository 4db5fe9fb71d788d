package covewalk.app.open;

import covewalk.survey.Reading;
import java.util.List;

/** Hands out ids that no reading has: whole numbers, each higher than all before. */
final class ReadingIds {

    /** Longer ones are no numbers of ours and could overflow. */
    private static final int MOST_DIGITS = 15;

    private long last;

    void take(List<Reading> readings) {
        for (Reading reading : readings) {
            String id = reading.id();
            if (!id.isEmpty() && id.length() <= MOST_DIGITS && id.chars().allMatch(c -> c >= '0' && c <= '9')) {
                last = Math.max(last, Long.parseLong(id));
            }
        }
    }

    String next() {
        return Long.toString(++last);
    }
}
