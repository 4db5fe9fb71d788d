package covewalk.survey.file.description;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiPredicate;
import java.util.function.Consumer;

/**
 * Writes an object of the description over the one that is in the file: known fields first, in the order they are put
 * in, then the unknown ones as they were. A number that is the same keeps its digits; what is empty is left out unless
 * the file had it.
 */
final class Overlay {

    private final ObjectNode old;
    private final ObjectNode fresh = JsonNodeFactory.instance.objectNode();
    private final Set<String> known = new HashSet<>();

    /** @param old the object in the file; an empty one where there is none */
    Overlay(JsonNode old) {
        this.old = old instanceof ObjectNode object ? object : JsonNodeFactory.instance.objectNode();
    }

    Overlay text(String name, String text) {
        known.add(name);
        if (!text.isEmpty() || old.has(name)) {
            boolean stays = text.isEmpty() && old.path(name).isNull();
            fresh.set(name, stays ? NullNode.getInstance() : fresh.textNode(text));
        }
        return this;
    }

    Overlay number(String name, double number) {
        known.add(name);
        JsonNode before = old.path(name);
        boolean same = before.isNumber() && before.doubleValue() == number;
        fresh.set(name, same ? before : DecimalNode.valueOf(new BigDecimal(Double.toString(number))));
        return this;
    }

    Overlay number(String name, OptionalDouble number) {
        return number.isPresent() ? number(name, number.getAsDouble()) : nothing(name);
    }

    Overlay whole(String name, OptionalInt number) {
        known.add(name);
        boolean same = number.isPresent() && old.path(name).isNumber()
                && old.path(name).doubleValue() == number.getAsInt();
        if (number.isEmpty() || same) {
            return same ? number(name, number.getAsInt()) : nothing(name);
        }
        fresh.set(name, IntNode.valueOf(number.getAsInt()));
        return this;
    }

    Overlay flag(String name, boolean flag) {
        known.add(name);
        fresh.put(name, flag);
        return this;
    }

    /** Leaves a field empty, as null where the file had one. */
    Overlay nothing(String name) {
        known.add(name);
        if (old.has(name)) {
            fresh.putNull(name);
        }
        return this;
    }

    /** Takes a field out, also where the file has it. */
    Overlay drop(String name) {
        known.add(name);
        return this;
    }

    /** An object of its own. */
    Overlay object(String name, Consumer<Overlay> fill) {
        known.add(name);
        Overlay inner = new Overlay(old.path(name));
        fill.accept(inner);
        fresh.set(name, inner.done());
        return this;
    }

    /** A list of objects, each written over the one of the file that it is the same as. */
    <T> Overlay list(String name, List<T> items, BiPredicate<T, JsonNode> same, BiConsumer<Overlay, T> fill) {
        known.add(name);
        ArrayNode list = fresh.arrayNode();
        for (int i = 0; i < items.size(); i++) {
            Overlay inner = new Overlay(find(old.path(name), i, items.get(i), same));
            fill.accept(inner, items.get(i));
            list.add(inner.done());
        }
        fresh.set(name, list);
        return this;
    }

    /** Looks at the same place first: mostly nothing was moved. */
    private <T> JsonNode find(JsonNode list, int place, T item, BiPredicate<T, JsonNode> same) {
        if (same.test(item, list.path(place))) {
            return list.path(place);
        }
        for (JsonNode candidate : list) {
            if (same.test(item, candidate)) {
                return candidate;
            }
        }
        return old.objectNode();
    }

    ObjectNode done() {
        old.properties().stream().filter(field -> !known.contains(field.getKey()))
                .forEach(field -> fresh.set(field.getKey(), field.getValue()));
        return fresh;
    }
}
