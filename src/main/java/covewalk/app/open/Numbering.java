package covewalk.app.open;

import covewalk.survey.Reading;
import covewalk.survey.file.log.ReadingLog;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Sorts readings into those that are in a log already and those that are not. What stands under the same id and says
 * something else is another reading: somebody gave the id out twice, and ours gets the next one.
 */
final class Numbering {

    private final ReadingLog log;
    private final Map<String, Reading> there;
    private final Map<String, String> renumbered;
    private final Set<String> taken = new HashSet<>();
    private final List<Reading> missing = new ArrayList<>();

    /**
     * @param there what is in the log, by id; empty where nothing of ours can be in it
     * @param renumbered ids given anew when the same was tried before; those of now are added
     */
    Numbering(ReadingLog log, Map<String, Reading> there, Map<String, String> renumbered) {
        this.log = log;
        this.there = there;
        this.renumbered = renumbered;
    }

    /** Each as it stands, or will stand, in the log: a correction follows the reading that it corrects. */
    List<Reading> settle(List<Reading> readings) {
        List<Reading> settled = new ArrayList<>();
        for (Reading reading : readings) {
            Reading follows = renumbered(reading);
            Reading same = there.get(follows.id());
            boolean isThere = same != null && log.alike(same, follows);
            settled.add(isThere ? same : free(reading.id(), follows));
        }
        return settled;
    }

    private Reading renumbered(Reading reading) {
        return of(reading, renumbered.getOrDefault(reading.id(), reading.id()), renumbered.getOrDefault(reading.replaces(), reading.replaces()));
    }

    private Reading free(String asked, Reading reading) {
        Reading free = reading;
        if (log.holds(reading.id()) || taken.contains(reading.id())) {
            free = of(reading, log.nextId(), reading.replaces());
            renumbered.put(asked, free.id());
        }
        taken.add(free.id());
        missing.add(free);
        return free;
    }

    /** Those that have to be added, in their order. */
    List<Reading> missing() {
        return missing;
    }

    /** The same under another id, correcting what is called {@code replaces}. */
    static Reading of(Reading reading, String id, String replaces) {
        return new Reading(id, reading.cove(), reading.positionM(), reading.role(), reading.setUp(), reading.round(), reading.colour(),
                reading.lux(), reading.takenAt(), replaces, reading.note(), reading.line());
    }
}
