package covewalk.survey.file.description;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.NullNode;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * On which line everything in a JSON text stands. Kept by object and list, as numbers; a path is followed only when
 * somebody asks for it, as a large description has some hundred thousand of them and mostly nothing is wrong.
 */
final class JsonLines {

    private static final Pattern STEP = Pattern.compile("([^.\\[\\]]+)|\\[(\\d+)]");
    private static final int[] NOTHING = {};

    private final Map<JsonNode, int[]> inside = new IdentityHashMap<>();
    private JsonNode root = NullNode.getInstance();
    private int rootLine = 1;

    void root(JsonNode node, int line) {
        root = node;
        rootLine = line;
    }

    /** @param lines of what an object or a list holds, in its order */
    void inside(JsonNode objectOrList, int[] lines) {
        inside.put(objectOrList, lines);
    }

    /** The line of a path such as {@code coves[1].lengthM}; of what it lies in, where it is missing itself. */
    int of(String path) {
        JsonNode node = root;
        int line = rootLine;
        Matcher step = STEP.matcher(path);
        while (step.find()) {
            int place = step.group(1) != null ? place(step.group(1), node) : node.isArray() ? Integer.parseInt(step.group(2)) : -1;
            int[] lines = inside.getOrDefault(node, NOTHING);
            if (place < 0 || place >= lines.length) {
                return line;
            }
            line = lines[place];
            node = node.isArray() ? node.get(place) : node.get(step.group(1));
        }
        return line;
    }

    /** Which of an object's fields has this name, from 0; -1 where none has. */
    private static int place(String name, JsonNode object) {
        Iterator<String> names = object.fieldNames();
        for (int place = 0; names.hasNext(); place++) {
            if (names.next().equals(name)) {
                return place;
            }
        }
        return -1;
    }
}
