package covewalk.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.file.disk.DiskWords;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
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
    private static final Pattern KEY = Pattern.compile("\"((?:folder|disk|lock|report|json|survey|log|punch|colour|seal|import|convert)\\.[a-z0-9.-]+)\"");
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
            String sentence = Problem.warning(key, "1", "2", "3", "4", "5").sentence(Locale.ROOT);
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
    void figuresHaveTheDecimalMarkOfTheLanguage() {
        Problem gap = Problem.warning("survey.gap", "18.2", "18.5");
        assertTrue(gap.sentence(Locale.GERMAN).startsWith("Von 18,2 m bis 18,5 m "), gap.sentence(Locale.GERMAN));
        assertTrue(gap.sentence(Locale.ROOT).startsWith("Nothing is placed from 18.2 m to 18.5 m."), gap.sentence(Locale.ROOT));
        Problem disagree = Problem.warning("colour.disagree", "x, y", "1.5", "u', v'");
        assertTrue(disagree.sentence(Locale.GERMAN).contains("um 1,5 Schritte"), disagree.sentence(Locale.GERMAN));
        Problem unusual = Problem.warning("colour.place.unusual", "3853", "0.0259");
        assertTrue(unusual.sentence(Locale.GERMAN).contains("3853 K mit Duv 0,0259."), unusual.sentence(Locale.GERMAN));
    }

    @Test
    void whatWasTypedStaysAsItWas() {
        String sentence = Problem.refusal("log.cell.number", "1.2.3").sentence(Locale.GERMAN);
        assertTrue(sentence.contains("1.2.3"), sentence);
        assertTrue(Problem.refusal("log.no-cove", "1.5").sentence(Locale.GERMAN).contains("1.5"), "a cove may be called so");
    }

    @Test
    void whyADiskRefusedIsSaidInTheLanguage() {
        Problem refused = Problem.refusal("folder.failed", DiskWords.reason(new AccessDeniedException("/somewhere")));
        assertTrue(refused.sentence(Locale.ROOT).startsWith("The disk does not do it: access is denied."), refused.sentence(Locale.ROOT));
        assertTrue(refused.sentence(Locale.GERMAN).startsWith("Der Datenträger macht es nicht: kein Zugriff."), refused.sentence(Locale.GERMAN));
        Problem full = Problem.refusal("folder.failed", DiskWords.reason(new FileSystemException("/somewhere", null, "No space left on device")));
        assertTrue(full.sentence(Locale.GERMAN).contains("No space left on device"), "the system's own words");
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
