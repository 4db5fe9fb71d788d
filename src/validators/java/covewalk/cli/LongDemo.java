package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The demonstration with forty more coves like its fifth, which nobody has read: too long to be laid out in one go. */
final class LongDemo {

    private static final int MORE_COVES = 40;

    private LongDemo() {
    }

    /** Where its PDF is. */
    static Path print(Path folder) throws IOException {
        Path demo = Path.of("survey-demo", "reading-rooms");
        Path copy = Files.createDirectories(folder.resolve("long"));
        Files.copy(demo.resolve("readings.csv"), copy.resolve("readings.csv"));
        ObjectMapper json = new ObjectMapper();
        ObjectNode survey = (ObjectNode) json.readTree(demo.resolve("survey.json").toFile());
        ArrayNode coves = (ArrayNode) survey.get("coves");
        for (int i = 1; i <= MORE_COVES; i++) {
            coves.add(((ObjectNode) coves.get(4).deepCopy()).put("id", "M" + i));
        }
        json.writeValue(copy.resolve("survey.json").toFile(), survey);
        FrontDoor.Run run = FrontDoor.run("report", copy.toString(), "--out", folder.resolve("long-out").toString());
        assertEquals(1, run.code(), run.err());
        return folder.resolve("long-out").resolve("punch-list.pdf");
    }
}
