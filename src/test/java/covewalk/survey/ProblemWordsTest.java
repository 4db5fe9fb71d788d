package covewalk.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ProblemWordsTest {

    private static final List<Path> SOURCES = List.of(Path.of("src/main/java/covewalk/survey"), Path.of("src/main/java/covewalk/app/open"),
            Path.of("src/main/java/covewalk/report"));
    private static final Pattern KEY = Pattern.compile("\"((?:folder|lock|report|json|survey|log|punch|colour|seal|import|convert)\\.[a-z0-9.-]+)\"");
    /** Beginnings of keys, asked for with {@code startsWith}, and names of files. */
    private static final Set<String> NO_KEYS = Set.of("colour.coarse.", "colour.place.", "survey.json", "seal.json", "punch.csv");

    @Test
    void everySentenceIsUsedAndNoneIsMissing() throws IOException {
        Set<String> used = new TreeSet<>();
        for (Path source : sources()) {
            Matcher keys = KEY.matcher(Files.readString(source));
            while (keys.find()) {
                used.add(keys.group(1));
            }
        }
        used.removeAll(NO_KEYS);
        assertEquals(new TreeSet<>(bundle().keySet()), used);
    }

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>();
        for (Path folder : SOURCES) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
            }
        }
        return sources;
    }

    @Test
    void everySentenceEndsAsOneAndHasNoSlotLeftOpen() {
        for (String key : bundle().keySet()) {
            String sentence = Problem.warning(key, "1", "2", "3", "4").sentence(Locale.ROOT);
            boolean inACell = key.startsWith("convert."); // a word in the table's problem column, ending in what stood there
            assertTrue(sentence.endsWith(".") || key.endsWith(".reason") || inACell, key + ": " + sentence);
            assertTrue(!sentence.contains("{") && !sentence.contains("  "), key + ": " + sentence);
        }
    }

    @Test
    void whatWasFoundIsNotReadAsAPattern() {
        assertEquals("{0} {1} is no text. Put it in quotation marks.",
                Problem.refusal("json.no-text", "{0} {1}").sentence(Locale.ROOT));
    }

    @Test
    void placeStandsBeforeTheSentence() {
        Problem problem = Problem.refusal("json.missing");
        assertEquals("This is missing. Fill it in.", problem.inFull(Locale.ROOT));
        assertEquals("survey.json:3: limits: This is missing. Fill it in.",
                problem.at("survey.json", 3, "limits").inFull(Locale.ROOT));
        assertEquals("survey.json: This is missing. Fill it in.", problem.at("survey.json", 0, "").inFull(Locale.ROOT));
    }

    private static ResourceBundle bundle() {
        return ResourceBundle.getBundle("covewalk.survey.problems", Locale.ROOT);
    }
}
