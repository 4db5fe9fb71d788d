package covewalk.survey.file.log;

import java.util.concurrent.atomic.AtomicLong;

/** Hands out ids for readings: whole numbers, each higher than all before. Several threads may ask. */
public final class ReadingNumbers {

    /** Longer ones are no numbers of ours and could overflow. */
    private static final int MOST_DIGITS = 15;

    private final AtomicLong last = new AtomicLong();

    /** An id that is in use; where it is no number it is in nobody's way. */
    public void passOver(String id) {
        if (!id.isEmpty() && id.length() <= MOST_DIGITS && id.chars().allMatch(c -> c >= '0' && c <= '9')) {
            last.accumulateAndGet(Long.parseLong(id), Math::max);
        }
    }

    /** Higher than all that were passed over or given out before. */
    public String next() {
        return Long.toString(last.incrementAndGet());
    }
}
