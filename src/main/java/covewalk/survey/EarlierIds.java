package covewalk.survey;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The ids of a log from its first reading on. Programs number readings upwards, and in a row that only rises no id comes
 * twice: while that holds nothing is kept but how far it holds. A table of a million ids would cost more than reading them.
 */
final class EarlierIds {

    /** Shorter before longer, which puts 99 before 100. */
    private static final Comparator<String> RISING = Comparator.comparingInt(String::length).thenComparing(id -> id);

    private final List<Reading> log;
    private int taken;
    private Set<String> known;

    EarlierIds(List<Reading> log) {
        this.log = log;
    }

    /** Takes the id of the log's next reading; whether it was not there before. */
    boolean takeNext() {
        String id = log.get(taken).id();
        if (known == null && !rises(id)) {
            known = new HashSet<>();
            log.subList(0, taken).forEach(reading -> known.add(reading.id()));
        }
        taken++;
        return known == null || known.add(id);
    }

    private boolean rises(String id) {
        return taken == 0 || RISING.compare(log.get(taken - 1).id(), id) < 0;
    }

    /** Whether one of the readings taken so far has this id. */
    boolean contains(String id) {
        return known == null ? isAmongRising(id) : known.contains(id);
    }

    private boolean isAmongRising(String id) {
        int from = 0;
        int to = taken;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (RISING.compare(log.get(middle).id(), id) < 0) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from < taken && log.get(from).id().equals(id);
    }
}
