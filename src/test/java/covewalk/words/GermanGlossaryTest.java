package covewalk.words;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The German bundles keep to the words of {@code docs/german.md}: one for one thing. */
class GermanGlossaryTest {

    private final String sentences = sentences("/covewalk/words/sentences_de.properties") + sentences("/covewalk/survey/problems_de.properties");

    /** A row of the table: the product's word, what German calls it, what it does not. */
    private record Row(String english, List<String> german, List<String> avoided) {
    }

    @Test
    void everyWordOfTheGlossaryIsUsed() throws IOException {
        assertTrue(rows().size() > 40, "the table was not found");
        String all = sentences.toLowerCase(Locale.ROOT);
        assertEquals(List.of(), rows().stream().flatMap(row -> row.german().stream())
                .filter(word -> !all.contains(word.toLowerCase(Locale.ROOT))).toList());
    }

    @Test
    void noWordToAvoidIsUsed() throws IOException {
        assertEquals(List.of(), rows().stream().flatMap(row -> row.avoided().stream()).filter(this::isUsed).toList());
    }

    @Test
    void noWordIsBothUsedAndAvoided() throws IOException {
        List<String> used = rows().stream().flatMap(row -> row.german().stream()).toList();
        assertEquals(List.of(), rows().stream().flatMap(row -> row.avoided().stream()).filter(used::contains).toList());
    }

    /** Alone or with an ending. */
    private boolean isUsed(String word) {
        return Pattern.compile("\\b" + Pattern.quote(word) + "(e|s|n|en|es)?\\b", Pattern.UNICODE_CHARACTER_CLASS).matcher(sentences).find();
    }

    private static List<Row> rows() throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("docs", "german.md"))) {
            return lines.filter(line -> line.startsWith("| ")).skip(2).map(line -> line.split("\\|", -1))
                    .map(cells -> new Row(cells[1].strip(), words(cells[2]), words(cells[3]))).toList();
        }
    }

    private static List<String> words(String cell) {
        return Arrays.stream(cell.split(",")).map(String::strip).filter(word -> !word.isEmpty()).toList();
    }

    private static String sentences(String resource) {
        Properties bundle = new Properties();
        try (Reader in = new InputStreamReader(Words.class.getResourceAsStream(resource), UTF_8)) {
            bundle.load(in);
        } catch (IOException unreadable) {
            throw new AssertionError(unreadable);
        }
        return bundle.values().stream().map(Object::toString).collect(Collectors.joining("\n", "", "\n"));
    }
}
