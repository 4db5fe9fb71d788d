package covewalk.survey.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BigIntegerNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import covewalk.survey.Problem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads JSON (RFC 8259) into a tree that keeps the digits of numbers, and notes the line of everything in it. Two fields
 * of one name, text behind the end, and what is too deep, too long or no JSON are problems.
 */
final class JsonTree {

    static final int MOST_BYTES = 64 << 20;

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder().maxDocumentLength(MOST_BYTES).maxNestingDepth(50)
                    .maxStringLength(100_000).maxNameLength(1000).maxNumberLength(100).build())
            .build();

    private final Places places = new Places();
    private final List<Problem> problems = new ArrayList<>();
    private final JsonParser parser;

    private JsonTree(JsonParser parser) {
        this.parser = parser;
    }

    /** @param root empty where the text is no object or no JSON; then {@code problems} says why */
    record Read(Optional<ObjectNode> root, Places places, List<Problem> problems) {
    }

    static Read read(byte[] json) throws IOException {
        try (JsonParser parser = FACTORY.createParser(json)) {
            return new JsonTree(parser).read();
        }
    }

    private Read read() throws IOException {
        Optional<ObjectNode> root = Optional.empty();
        try {
            JsonNode node = parser.nextToken() == null ? NullNode.getInstance() : node("");
            if (parser.nextToken() != null) {
                add(Problem.refusal("json.trailing"), parser.currentTokenLocation().getLineNr());
            } else if (node instanceof ObjectNode object) {
                root = problems.isEmpty() ? Optional.of(object) : Optional.empty();
            } else {
                add(Problem.refusal("json.no-object"), 1);
            }
        } catch (JsonProcessingException broken) {
            root = Optional.empty();
            int line = broken.getLocation() == null ? 1 : broken.getLocation().getLineNr();
            add(Problem.refusal(key(broken)), Math.max(1, line));
        }
        return new Read(root, places, problems);
    }

    private static String key(JsonProcessingException broken) {
        if (broken instanceof StreamConstraintsException) {
            return "json.too-much";
        }
        return broken instanceof JsonEOFException ? "json.ends-early" : "json.syntax";
    }

    private JsonNode node(String path) throws IOException {
        places.add(path, parser.currentTokenLocation().getLineNr());
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(path);
            case START_ARRAY -> array(path);
            case VALUE_STRING -> TextNode.valueOf(parser.getText());
            case VALUE_NUMBER_INT -> BigIntegerNode.valueOf(parser.getBigIntegerValue());
            case VALUE_NUMBER_FLOAT -> DecimalNode.valueOf(parser.getDecimalValue());
            case VALUE_TRUE -> BooleanNode.TRUE;
            case VALUE_FALSE -> BooleanNode.FALSE;
            default -> NullNode.getInstance();
        };
    }

    private ObjectNode object(String path) throws IOException {
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            String at = path.isEmpty() ? name : path + "." + name;
            int line = parser.currentTokenLocation().getLineNr();
            parser.nextToken();
            JsonNode value = node(at);
            if (object.has(name)) {
                problems.add(Problem.refusal("json.twice").at(FileNames.DESCRIPTION, line, at));
            }
            object.set(name, value);
        }
        return object;
    }

    private ArrayNode array(String path) throws IOException {
        ArrayNode array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(node(path + "[" + array.size() + "]"));
        }
        return array;
    }

    private void add(Problem problem, int line) {
        problems.add(problem.at(FileNames.DESCRIPTION, line, ""));
    }
}
