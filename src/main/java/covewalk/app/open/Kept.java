package covewalk.app.open;

import covewalk.survey.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Readings that are on disk now.
 *
 * @param before all that was in the log, where it was read anew; empty where nothing new can have been there
 * @param readings those that were to be kept, in their order, with their lines; with another id where somebody else's
 *     reading had it already
 */
record Kept(Optional<List<Reading>> before, List<Reading> readings) {

    static final Kept NOTHING = new Kept(Optional.empty(), List.of());

    /** The whole log, after one that was as {@code known} when it was looked at last. */
    List<Reading> after(List<Reading> known) {
        List<Reading> log = new ArrayList<>(before.orElse(known));
        Set<Reading> there = before.isPresent() ? new HashSet<>(log) : Set.of();
        readings.stream().filter(reading -> !there.contains(reading)).forEach(log::add);
        return log;
    }
}
