package covewalk.app.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.app.Start;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TextsTest {

    private static final Path BUNDLES = Path.of("src/main/resources/covewalk/app");
    private static final Path SOURCES = Path.of("src/main/java/covewalk/app");
    private static final Pattern ASKED_FOR = Pattern.compile("texts\\.(get|count)\\(\\s*\"([a-z][A-Za-z0-9.-]*[A-Za-z0-9])\"\\s*[,)]");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][A-Za-z0-9.-]*)\"");
    private static final Pattern SLOT = Pattern.compile("\\{[0-9]\\}");

    /** The folders of bundles, each with the package of screens it belongs to. */
    static List<Path> bundles() throws IOException {
        try (Stream<Path> files = Files.walk(BUNDLES)) {
            return files.filter(file -> file.endsWith("texts.properties")).map(Path::getParent).toList();
        }
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void germanSaysAllThatEnglishSaysWithTheSameDetails(Path folder) throws IOException {
        assertEquals(slots(read(folder, "texts.properties")), slots(read(folder, "texts_de.properties")));
    }

    @ParameterizedTest
    @MethodSource("bundles")
    void everyTextAskedForIsThere(Path folder) throws IOException {
        Properties texts = read(folder, "texts.properties");
        Set<String> missing = new TreeSet<>();
        Matcher asked = ASKED_FOR.matcher(sources(folder));
        while (asked.find()) {
            String key = asked.group(2);
            boolean there = asked.group(1).equals("get") ? texts.containsKey(key)
                    : texts.containsKey(key + ".one") && texts.containsKey(key + ".more");
            if (!there) {
                missing.add(key);
            }
        }
        assertEquals(Set.of(), missing);
    }

    /** A text may be asked for by its key, or by the beginning of its key with the code of a constant behind it. */
    @ParameterizedTest
    @MethodSource("bundles")
    void noTextIsLeftOver(Path folder) throws IOException {
        Set<String> literals = new TreeSet<>();
        Matcher literal = LITERAL.matcher(sources(folder));
        while (literal.find()) {
            literals.add(literal.group(1));
        }
        Set<String> idle = read(folder, "texts.properties").stringPropertyNames().stream().filter(key -> literals.stream().noneMatch(
                used -> key.equals(used) || key.equals(used + ".one") || key.equals(used + ".more")
                        || used.endsWith(".") && key.startsWith(used))).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of(), idle);
    }

    @Test
    void germanIsFoundAndAnyOtherLanguageGetsEnglish() {
        assertEquals("Befunde", new Texts(Start.class, Locale.GERMAN).get("place.faults"));
        assertEquals("Faults", new Texts(Start.class, Locale.FRENCH).get("place.faults"));
    }

    @Test
    void whatIsPutInIsNotReadAsAPattern() {
        assertTrue(new Texts(Start.class, Locale.ENGLISH).get("trouble.no-path", "{0}{1}").endsWith("{0}{1}"));
    }

    private static Map<String, Set<String>> slots(Properties texts) {
        return texts.stringPropertyNames().stream().collect(Collectors.toMap(key -> key, key ->
                SLOT.matcher(texts.getProperty(key)).results().map(found -> found.group()).collect(Collectors.toCollection(TreeSet::new)),
                (a, b) -> a, TreeMap::new));
    }

    private static Properties read(Path folder, String file) throws IOException {
        Properties texts = new Properties();
        try (Reader in = Files.newBufferedReader(folder.resolve(file))) {
            texts.load(in);
        }
        return texts;
    }

    /** Those of the package itself: each package has its own bundle. */
    private static String sources(Path bundle) throws IOException {
        try (Stream<Path> files = Files.list(SOURCES.resolve(BUNDLES.relativize(bundle)))) {
            StringBuilder all = new StringBuilder();
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                all.append(Files.readString(file));
            }
            return all.toString();
        }
    }
}
