package covewalk.survey.file.description;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.survey.Problem;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * The fields of one object of the description. A field that is missing or null is empty; one that holds something else
 * than it should is a problem, and empty as well, so that reading goes on and tells everything at once.
 */
public final class Fields {

    private static final int NO_LIST = -1;

    private final ObjectNode node;
    private final Fields outer;
    private final String called;
    private final int index;
    private final Asked asked;
    private final List<Problem> problems;

    /** @param problems where everything wrong goes, with the path as its column */
    public Fields(ObjectNode node, String path, List<Problem> problems) {
        this(node, null, path, NO_LIST, new Asked(), problems);
    }

    private Fields(ObjectNode node, Fields outer, String called, int index, Asked asked, List<Problem> problems) {
        this.node = node;
        this.outer = outer;
        this.called = called;
        this.index = index;
        this.asked = asked;
        this.problems = problems;
    }

    String path(String of) {
        String path = path();
        return path.isEmpty() ? of : path + "." + of;
    }

    /** Put together only when asked for: mostly nothing is wrong. */
    String path() {
        if (outer == null) {
            return called;
        }
        String path = outer.path(called);
        return index == NO_LIST ? path : path + "[" + index + "]";
    }

    /** Which of its list it is, from 0; -1 where it is in none. */
    int index() {
        return index;
    }

    public void add(String name, Problem problem) {
        problems.add(problem.inColumn(path(name)));
    }

    boolean has(String name) {
        asked.add(name);
        return node.hasNonNull(name);
    }

    Optional<JsonNode> needed(String name) {
        if (!has(name)) {
            add(name, Problem.refusal("json.missing"));
        }
        return value(name);
    }

    private Optional<JsonNode> value(String name) {
        return has(name) ? Optional.of(node.get(name)) : Optional.empty();
    }

    public String text(String name) {
        Optional<JsonNode> value = value(name);
        if (value.isPresent() && !value.get().isTextual()) {
            add(name, Problem.refusal("json.no-text", value.get()));
            return "";
        }
        return value.map(JsonNode::textValue).orElse("");
    }

    /** An id or the like, which must be there and not be empty. */
    public String neededText(String name) {
        String text = needed(name).isPresent() ? text(name).strip() : "";
        if (has(name) && text.isEmpty() && node.get(name).isTextual()) {
            add(name, Problem.refusal("json.empty"));
        }
        return text;
    }

    OptionalDouble number(String name, Range range) {
        Optional<JsonNode> value = value(name);
        if (value.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!value.get().isNumber()) {
            add(name, Problem.refusal("json.no-number", value.get()));
            return OptionalDouble.empty();
        }
        double number = value.get().doubleValue();
        if (!range.holds(number)) {
            add(name, range.problem(value.get().asText()));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number);
    }

    /** The number; where it is missing or wrong, which is told, {@code otherwise}. */
    public double neededNumber(String name, Range range, double otherwise) {
        return needed(name).isPresent() ? number(name, range).orElse(otherwise) : otherwise;
    }

    OptionalInt whole(String name, Range range) {
        OptionalDouble number = number(name, range);
        if (number.isPresent() && number.getAsDouble() != Math.rint(number.getAsDouble())) {
            add(name, Problem.refusal("json.no-whole", node.get(name).asText()));
            return OptionalInt.empty();
        }
        return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
    }

    boolean flag(String name) {
        Optional<JsonNode> value = value(name);
        if (value.isPresent() && !value.get().isBoolean()) {
            add(name, Problem.refusal("json.no-flag", value.get()));
        }
        return value.map(JsonNode::booleanValue).orElse(false);
    }

    Optional<LocalDate> date(String name) {
        String text = text(name);
        try {
            return text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeException noDate) {
            add(name, Problem.refusal("json.no-date", text));
            return Optional.empty();
        }
    }

    /** One of a few words; an empty text counts as missing. */
    <T> Optional<T> word(String name, Function<String, Optional<T>> of, String all) {
        String text = text(name);
        Optional<T> word = text.isEmpty() ? Optional.empty() : of.apply(text);
        if (word.isEmpty() && !text.isEmpty()) {
            add(name, Problem.refusal("json.no-word", text, all));
        }
        return word;
    }

    /** The object; an empty one where there is none. */
    Fields object(String name) {
        Optional<JsonNode> value = value(name);
        if (value.isPresent() && !value.get().isObject()) {
            add(name, Problem.refusal("json.no-fields"));
        }
        ObjectNode object = value.isPresent() && value.get() instanceof ObjectNode found ? found : node.objectNode();
        return new Fields(object, this, name, NO_LIST, asked.inside(name), problems);
    }

    public List<Fields> objects(String name) {
        Optional<JsonNode> value = value(name);
        List<Fields> objects = new ArrayList<>();
        if (value.isPresent() && !value.get().isArray()) {
            add(name, Problem.refusal("json.no-list"));
        }
        for (int i = 0; value.isPresent() && value.get().isArray() && i < value.get().size(); i++) {
            if (value.get().get(i) instanceof ObjectNode object) {
                objects.add(new Fields(object, this, name, i, asked.inside(name), problems));
            } else {
                add(name + "[" + i + "]", Problem.refusal("json.no-fields"));
            }
        }
        return objects;
    }

    /** What was asked for, of this object and of others like it. */
    Asked asked() {
        return asked;
    }

    /** Fields, here and in all that lies within, that nobody asked for and that look like one that is missing; for when all is read. */
    void misspelt(List<Problem> found) {
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            String name = field.getKey();
            if (!asked.has(name)) {
                Misspelt.meant(name, asked.names(), node).ifPresent(meant -> found.add(Problem.warning("json.misspelt", name, meant).inColumn(path(name))));
            } else if (asked.lookedInside(name)) {
                (field.getValue().isArray() ? objects(name) : List.of(object(name))).forEach(within -> within.misspelt(found));
            }
        }
    }
}
