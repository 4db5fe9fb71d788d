package covewalk.survey.file.description;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Which fields were asked for of objects of one kind: all reels are one kind, and the claimed centres of all reels another. So
 * whoever reads a description says, by reading it, which fields there are, and no list of them has to be kept beside.
 */
final class Asked {

    private final Set<String> names = new HashSet<>();
    private final Map<String, Asked> inside = new HashMap<>();

    void add(String name) {
        names.add(name);
    }

    boolean has(String name) {
        return names.contains(name);
    }

    /** Of the objects in a field, one or a list of them. */
    Asked inside(String name) {
        return inside.computeIfAbsent(name, first -> new Asked());
    }

    /** Whether objects were looked for there at all. */
    boolean lookedInside(String name) {
        return inside.containsKey(name);
    }

    Set<String> names() {
        return names;
    }
}
