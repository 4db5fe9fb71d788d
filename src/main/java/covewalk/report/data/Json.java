package covewalk.report.data;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** JSON with the fields in the order in which they were put, plain decimals, and line feeds on every machine. */
final class Json {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Json() {
    }

    static ObjectNode object() {
        return NODES.objectNode();
    }

    static ArrayNode array() {
        return NODES.arrayNode();
    }

    static ArrayNode texts(List<String> texts) {
        ArrayNode array = array();
        texts.forEach(array::add);
        return array;
    }

    /** Rounded to this many decimals. */
    static JsonNode number(double value, int decimals) {
        return number(value, decimals, RoundingMode.HALF_EVEN);
    }

    /** As {@link #number(double, int)}; null where there is none. */
    static JsonNode number(OptionalDouble value, int decimals) {
        return value.isPresent() ? number(value.getAsDouble(), decimals) : NullNode.getInstance();
    }

    static JsonNode whole(OptionalInt value) {
        return value.isPresent() ? NODES.numberNode(value.getAsInt()) : NullNode.getInstance();
    }

    /** Cut, not rounded: a confidence is never overstated. */
    static JsonNode confidence(double value) {
        return number(value, 6, RoundingMode.DOWN);
    }

    static String text(ObjectNode object) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        ObjectWriter writer = JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build()
                .writer(new DefaultPrettyPrinter().withObjectIndenter(indent));
        try {
            return writer.writeValueAsString(object) + "\n";
        } catch (JsonProcessingException noText) {
            throw new UncheckedIOException(noText);
        }
    }

    private static JsonNode number(double value, int decimals, RoundingMode rounding) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, rounding).stripTrailingZeros();
        return DecimalNode.valueOf(rounded.scale() < 1 ? rounded.setScale(1) : rounded);
    }
}
