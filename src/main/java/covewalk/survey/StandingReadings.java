package covewalk.survey;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which readings of a log still stand: those no later row corrects or withdraws. */
public final class StandingReadings {

    private StandingReadings() {
    }

    /** In the order of the log; withdrawals and what they withdraw are left out. */
    public static List<Reading> of(List<Reading> log) {
        Set<String> replaced = new HashSet<>();
        for (Reading reading : log) {
            if (!reading.replaces().isEmpty()) {
                replaced.add(reading.replaces());
            }
        }
        if (replaced.isEmpty()) {
            return List.copyOf(log); // no withdrawal either, as each names what it takes back
        }
        return log.stream().filter(reading -> !reading.withdraws() && !replaced.contains(reading.id())).toList();
    }
}
