package covewalk.survey.file.description;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import covewalk.survey.Problem;
import covewalk.survey.Seen;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.SurveyText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What docs/survey.md says of each field of survey.json is what the program does with it. */
class SurveyPageTest {

    private static final Path PAGE = Path.of("docs/survey.md");
    private static final Pattern EXAMPLE = Pattern.compile("(?ms)^```json\n(.*?)^```");
    private static final Pattern SECTION = Pattern.compile("(?ms)^## (.*?)\n(.*?)(?=^## |\\z)");
    private static final Pattern LINE = Pattern.compile("(?m)^\\| `(\\w+)` \\| (.*?) \\|(.*?)\\| (.*?) \\|$");
    private static final Pattern RANGE = Pattern.compile("(above |between )?(-?\\d+(?:\\.\\d+)?) (?:to|and) (-?\\d+(?:\\.\\d+)?)$");
    private static final Pattern VALUE = Pattern.compile("`?(\\d+(?:\\.\\d+)?|uv-circle|joint|strip|seen|false)`?(?:, said to be assumed)?");

    /** Which objects each section is of, by the fields that lead to one of them in the example. */
    private static final Map<String, List<String>> OBJECTS = new TreeMap<>(Map.of(
            "The whole", List.of(""), "`site`", List.of("/site"), "`visit`", List.of("/visit"), "`setups`", List.of("/setups/0"),
            "`limits`", List.of("/limits"), "`reels`", List.of("/reels/0"), "`coves`", List.of("/coves/0"), "`feeds`", List.of("/coves/0/feeds/0"),
            "`placements`", List.of("/coves/0/placements/0"), "`claim`", List.of("/claim")));

    static {
        OBJECTS.put("`target`, `claimedCentre`", List.of("/coves/0/target", "/reels/0/claimedCentre"));
    }

    @TempDir
    Path folder;

    /** One line of a table. */
    record Field(String section, String name, String unit, String missing) {

        /** Where it stands in the example; of a colour, in the one that has it. */
        String object(JsonNode example) {
            return OBJECTS.get(section).stream().filter(object -> example.at(object).has(name)).findFirst().orElseThrow(() ->
                    new AssertionError("the example has no " + name + " under " + section));
        }
    }

    static Stream<Field> fields() throws IOException {
        List<Field> fields = new ArrayList<>();
        Matcher section = SECTION.matcher(page());
        while (section.find()) {
            String title = section.group(1);
            LINE.matcher(section.group(2)).results()
                    .forEach(line -> fields.add(new Field(title, line.group(1), line.group(3).strip(), line.group(4).strip())));
        }
        return fields.stream();
    }

    private static String page() throws IOException {
        return Files.readString(PAGE).replace("\r", "");
    }

    private static ObjectNode example() throws IOException {
        Matcher example = EXAMPLE.matcher(page());
        assertTrue(example.find());
        return (ObjectNode) new ObjectMapper().readTree(example.group(1));
    }

    private ReadSurvey read(Field field, Consumer<ObjectNode> change) throws IOException {
        ObjectNode example = example();
        change.accept((ObjectNode) example.at(field.object(example)));
        return SurveyFolder.at(SurveyText.folder(folder, example.toString(), null)).read();
    }

    @Test
    void theExampleIsSound() throws IOException {
        ReadSurvey read = SurveyFolder.at(SurveyText.folder(folder, example().toString(), null)).read();
        assertEquals("", Seen.all(read.problems()));
        assertTrue(read.survey().isPresent());
    }

    @Test
    void everyFieldThatIsReadHasItsLineAndNoOtherHas() throws IOException {
        JsonTree.Read tree = JsonTree.read(example().toString().getBytes(StandardCharsets.UTF_8));
        Fields whole = new Fields(tree.root().orElseThrow(), "", new ArrayList<>());
        SurveyEntry.isOurs(whole);
        SurveyEntry.read(whole, tree.places());
        Map<String, Set<String>> lines = new TreeMap<>();
        fields().forEach(field -> OBJECTS.get(field.section())
                .forEach(object -> lines.computeIfAbsent(object.replace("/0", ""), first -> new TreeSet<>()).add(field.name())));
        Map<String, Set<String>> asked = new TreeMap<>();
        gather(whole.asked(), "", asked);
        assertEquals(asked, lines);
    }

    private static void gather(Asked of, String path, Map<String, Set<String>> all) {
        all.put(path, new TreeSet<>(of.names()));
        of.names().stream().filter(of::lookedInside).forEach(name -> gather(of.inside(name), path + "/" + name, all));
    }

    @ParameterizedTest
    @MethodSource("fields")
    void whatIsSaidToBeRefusedIsAndNothingElse(Field field) throws IOException {
        List<Problem> refusals = read(field, object -> object.remove(field.name())).problems().stream()
                .filter(problem -> problem.refused() && problem.key().startsWith("json.")).toList();
        assertEquals(field.missing().startsWith("refused"), !refusals.isEmpty(), Seen.all(refusals));
    }

    @ParameterizedTest
    @MethodSource("fields")
    void whatIsSaidToBeTakenInsteadIs(Field field) throws IOException {
        Matcher value = VALUE.matcher(field.missing());
        if (value.matches()) {
            String missing = inWords(read(field, object -> object.remove(field.name())));
            assertEquals(missing, inWords(read(field, object -> put(object, field.name(), value.group(1)))));
            assertFalse(missing.isEmpty());
        }
    }

    /** Apart from what is told of the three uncertainties: that they were assumed. */
    private static String inWords(ReadSurvey read) {
        return read.survey().orElseThrow().toString().replaceAll("assumed=\\[[^]]*]", "");
    }

    private static void put(ObjectNode object, String name, String value) {
        if (value.matches("-?\\d+")) {
            object.put(name, Long.parseLong(value));
        } else if (value.matches("-?\\d+\\.\\d+")) {
            object.put(name, Double.parseDouble(value));
        } else if (value.equals("false")) {
            object.put(name, false);
        } else {
            object.put(name, value);
        }
    }

    @ParameterizedTest
    @MethodSource("fields")
    void rangesEndWhereTheyAreSaidTo(Field field) throws IOException {
        Matcher range = RANGE.matcher(field.unit());
        if (range.find()) {
            boolean open = range.group(1) != null;
            boolean openAbove = "between ".equals(range.group(1));
            assertEquals(open, isOutside(field, range.group(2)), field.name() + " " + range.group(2));
            assertEquals(openAbove, isOutside(field, range.group(3)), field.name() + " " + range.group(3));
            assertTrue(isOutside(field, Long.toString((long) Math.floor(Double.parseDouble(range.group(2))) - 1)), field.name() + " below");
            assertTrue(isOutside(field, Long.toString((long) Math.ceil(Double.parseDouble(range.group(3))) + 1)), field.name() + " above");
        }
    }

    private boolean isOutside(Field field, String value) throws IOException {
        return read(field, object -> put(object, field.name(), value)).problems().stream()
                .anyMatch(problem -> problem.key().startsWith("json.range") || problem.key().matches("colour\\.(cct|duv)\\.(range|whole)"));
    }

    /** So that the tests above have something to look at. */
    @Test
    void theTablesAreFound() throws IOException {
        assertTrue(fields().count() > 60);
        assertTrue(fields().filter(field -> RANGE.matcher(field.unit()).find()).count() > 15);
        assertTrue(fields().filter(field -> VALUE.matcher(field.missing()).matches()).count() > 9);
    }
}
