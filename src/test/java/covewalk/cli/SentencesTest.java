package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class SentencesTest {

    private static final Pattern ASKED = Pattern.compile("\"([a-z]+(?:[.-][a-z]+)*)\"");

    @Test
    void everySentenceIsSaidSomewhere() throws IOException {
        Set<String> unsaid = new TreeSet<>(sentences().stringPropertyNames());
        unsaid.removeAll(wordsInQuotationMarks());
        assertEquals(Set.of(), unsaid);
    }

    @Test
    void everySentenceThatIsAskedForIsThere() throws IOException {
        Set<String> asked = Pattern.compile("Sentences\\.of\\(\\s*\"([^\"]+)\"").matcher(sources()).results()
                .map(found -> found.group(1)).collect(Collectors.toCollection(TreeSet::new));
        assertFalse(asked.isEmpty());
        asked.removeAll(sentences().stringPropertyNames());
        assertEquals(Set.of(), asked);
    }

    /** A single one would swallow itself and the places after it. */
    @Test
    void apostrophesAreWrittenTwice() throws IOException {
        Properties sentences = sentences();
        Set<String> single = sentences.stringPropertyNames().stream()
                .filter(key -> sentences.getProperty(key).replace("''", "").contains("'")).collect(Collectors.toSet());
        assertEquals(Set.of(), single);
    }

    private static Properties sentences() throws IOException {
        Properties sentences = new Properties();
        try (Reader in = new InputStreamReader(Sentences.class.getResourceAsStream("sentences.properties"), StandardCharsets.UTF_8)) {
            sentences.load(in);
        }
        return sentences;
    }

    private static Set<String> wordsInQuotationMarks() throws IOException {
        return ASKED.matcher(sources()).results().map((MatchResult found) -> found.group(1)).collect(Collectors.toSet());
    }

    private static String sources() throws IOException {
        StringBuilder text = new StringBuilder();
        try (var files = Files.list(Path.of("src/main/java/covewalk/cli"))) {
            for (Path file : files.toList()) {
                text.append(Files.readString(file));
            }
        }
        return text.toString();
    }
}
