package covewalk.survey.file.description;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
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
import covewalk.survey.file.disk.FileNames;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Reads JSON (RFC 8259) into a tree that keeps the digits of numbers, and notes the line of everything in it. Two fields
 * of one name, text behind the end, and what is too deep, too long or no JSON are problems.
 */
public final class JsonTree {

    static final int MOST_BYTES = 64 << 20;

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder().maxDocumentLength(MOST_BYTES).maxNestingDepth(50)
                    .maxStringLength(100_000).maxNameLength(1000).maxNumberLength(100).build())
            .build();

    private final JsonLines lines = new JsonLines();
    private final List<Problem> problems = new ArrayList<>();
    private final JsonParser parser;

    private JsonTree(JsonParser parser) {
        this.parser = parser;
    }

    /** @param root empty where the text is no object or no JSON; then {@code problems} says why */
    public record Read(Optional<ObjectNode> root, Places places, List<Problem> problems) {
    }

    public static Read read(byte[] json) throws IOException {
        try (JsonParser parser = FACTORY.createParser(json)) {
            Read read = new JsonTree(parser).read();
            return read.root().isPresent() || NotUtf8.line(json) == 0 ? read
                    : new Read(read.root(), read.places(), List.of(Problem.refusal("json.not-utf8").at(FileNames.DESCRIPTION, NotUtf8.line(json), "")));
        }
    }

    private Read read() throws IOException {
        Optional<ObjectNode> root = Optional.empty();
        try {
            boolean blank = parser.nextToken() == null;
            JsonNode node = blank ? NullNode.getInstance() : root();
            if (blank) {
                add(Problem.refusal("json.blank"), 0);
            } else if (parser.nextToken() != null) {
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
        return new Read(root, new Places(lines), problems);
    }

    private static String key(JsonProcessingException broken) {
        if (broken instanceof StreamConstraintsException) {
            return "json.too-much";
        }
        return broken instanceof JsonEOFException ? "json.ends-early" : "json.syntax";
    }

    private JsonNode root() throws IOException {
        int line = parser.currentTokenLocation().getLineNr();
        JsonNode node = node();
        lines.root(node, line);
        return node;
    }

    private JsonNode node() throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object();
            case START_ARRAY -> array();
            case VALUE_STRING -> TextNode.valueOf(parser.getText());
            case VALUE_NUMBER_INT -> BigIntegerNode.valueOf(parser.getBigIntegerValue());
            case VALUE_NUMBER_FLOAT -> DecimalNode.valueOf(parser.getDecimalValue());
            case VALUE_TRUE -> BooleanNode.TRUE;
            case VALUE_FALSE -> BooleanNode.FALSE;
            default -> NullNode.getInstance();
        };
    }

    private ObjectNode object() throws IOException {
        ObjectNode object = NODES.objectNode();
        IntStream.Builder inside = IntStream.builder();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            int line = parser.currentTokenLocation().getLineNr();
            parser.nextToken();
            inside.add(parser.currentTokenLocation().getLineNr());
            JsonNode value = node();
            if (object.has(name)) {
                problems.add(Problem.refusal("json.twice").at(FileNames.DESCRIPTION, line, path(parser.getParsingContext())));
            }
            object.set(name, value);
        }
        lines.inside(object, inside.build().toArray());
        return object;
    }

    private ArrayNode array() throws IOException {
        ArrayNode array = NODES.arrayNode();
        IntStream.Builder inside = IntStream.builder();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            inside.add(parser.currentTokenLocation().getLineNr());
            array.add(node());
        }
        lines.inside(array, inside.build().toArray());
        return array;
    }

    /** Where the parser is, as in {@code coves[1].lengthM}. */
    private static String path(JsonStreamContext at) {
        if (at.inRoot()) {
            return "";
        }
        String outer = path(at.getParent());
        if (at.inArray()) {
            return outer + "[" + at.getCurrentIndex() + "]";
        }
        return outer.isEmpty() ? at.getCurrentName() : outer + "." + at.getCurrentName();
    }

    private void add(Problem problem, int line) {
        problems.add(problem.at(FileNames.DESCRIPTION, line, ""));
    }
}
