package covewalk.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether readings have ids of their own, and corrections and withdrawals name an earlier reading. */
final class ReplacementCheck {

    private final EarlierIds earlier;
    private final Set<String> standing = new HashSet<>();
    private final Map<String, Reading> correctedBy = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private ReplacementCheck(List<Reading> log) {
        earlier = new EarlierIds(log);
    }

    /** @param standing those of the log that stand */
    static List<Problem> problems(List<Reading> log, List<Reading> standing) {
        ReplacementCheck check = new ReplacementCheck(log);
        standing.stream().filter(reading -> !reading.replaces().isEmpty())
                .forEach(reading -> check.standing.add(reading.id()));
        log.forEach(check::take);
        return check.problems;
    }

    private void take(Reading reading) {
        if (!reading.replaces().isEmpty()) {
            checkReplaced(reading);
        }
        if (!earlier.takeNext()) {
            add(reading, "reading", Problem.refusal("log.id-twice", reading.id()));
        }
    }

    private void checkReplaced(Reading reading) {
        String replaced = reading.replaces();
        if (!earlier.contains(replaced)) {
            add(reading, "replaces", Problem.refusal("log.replaces-unknown", replaced));
        } else if (standing.contains(reading.id())) {
            Reading other = correctedBy.putIfAbsent(replaced, reading);
            if (other != null) {
                add(reading, "replaces", Problem.warning("log.replaced-twice", replaced, other.id()));
            }
        }
    }

    private void add(Reading reading, String column, Problem problem) {
        problems.add(problem.at("", reading.line(), column));
    }
}
