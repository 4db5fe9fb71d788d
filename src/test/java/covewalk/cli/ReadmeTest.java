package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command on the front page works, and prints what the page shows. */
class ReadmeTest {

    private static final Path README = Path.of("README.md");
    private static final Path DEMO = Path.of("survey-demo");
    private static final String COVEWALK = "java -jar target/covewalk.jar ";
    /** Those that build cannot run in a test; {@code .ci/run} runs them. */
    private static final Set<String> BUILDING = Set.of("mvn -q -DskipTests package", "mvn verify");
    /** Exit codes other than 0, by what the command does: the demonstration holds faults, and its copy is added to. */
    private static final Map<String, Integer> CODES = Map.of("check", 1, "report", 1, "verify", 3);

    @TempDir
    Path copy;

    @Test
    void everyCommandDoesWhatThePageSays() throws IOException {
        copyOfTheDemo();
        Set<String> printed = new HashSet<>();
        int run = 0;
        for (String command : commands()) {
            if (command.startsWith(COVEWALK) && opensTheWindow(command.substring(COVEWALK.length()))) {
                run++;
            } else if (command.startsWith(COVEWALK)) {
                printed.addAll(linesOf(command.substring(COVEWALK.length())));
                run++;
            } else if (command.startsWith("cp -r ")) {
                copy(copy.resolve(command.split(" ")[2]), copy.resolve(command.split(" ")[3]));
            } else {
                assertTrue(BUILDING.contains(command), "nobody tries this command: " + command);
            }
        }
        assertTrue(run > 4, "the page's commands were not found");
        assertEquals(Set.of(), shownButNotIn(printed), "the page shows lines that no command prints");
    }

    /** Its screens have tests of their own; here it is enough that there is something to open. */
    private boolean opensTheWindow(String arguments) {
        return Files.isRegularFile(copy.resolve(arguments).resolve("survey.json"));
    }

    private Set<String> linesOf(String arguments) {
        List<String> words = words(arguments);
        Run run = FrontDoor.run(words.stream().map(this::inTheCopy).toArray(String[]::new));
        assertEquals(CODES.getOrDefault(words.get(0), 0), run.code(), arguments + "\n" + run.err());
        return run.out().lines().collect(Collectors.toSet());
    }

    private static Set<String> shownButNotIn(Set<String> printed) throws IOException {
        Set<String> shown = new TreeSet<>(blocks("text"));
        assertNotEquals(Set.of(), shown);
        shown.removeAll(printed);
        return shown;
    }

    @Test
    void theBuildServerRunsTheCommandsThatBuild() throws IOException {
        String server = Files.readString(Path.of(".ci", "run"));
        for (String line : blocks("sh")) {
            if (line.contains("mvn ")) {
                assertTrue(server.contains(line.replace("mvn verify", "mvn -B verify")), line);
            }
        }
    }

    private static List<String> commands() throws IOException {
        return blocks("sh").stream().flatMap(line -> Arrays.stream(line.split(" && "))).toList();
    }

    /** The lines of all blocks of a kind. */
    private static List<String> blocks(String kind) throws IOException {
        String page = Files.readString(README).replace("\r", "");
        return Pattern.compile("(?ms)^```" + kind + "\n(.*?)^```").matcher(page).results()
                .flatMap(block -> block.group(1).lines()).filter(line -> !line.isBlank()).toList();
    }

    /** Splits as a shell does, as far as the page needs it. */
    private static List<String> words(String arguments) {
        return Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(arguments).results()
                .map((MatchResult word) -> word.group(1) == null ? word.group(2) : word.group(1)).toList();
    }

    private String inTheCopy(String word) {
        boolean file = word.startsWith("survey-demo/") || word.startsWith("target/");
        return file ? copy.resolve(word).toString() : word;
    }

    private void copyOfTheDemo() throws IOException {
        copy(DEMO, copy.resolve("survey-demo"));
        Files.createDirectories(copy.resolve("target"));
    }

    private static void copy(Path from, Path to) throws IOException {
        List<Path> all = new ArrayList<>();
        try (Stream<Path> found = Files.walk(from)) {
            found.forEach(all::add);
        }
        for (Path each : all) {
            Files.copy(each, to.resolve(from.relativize(each).toString()));
        }
    }
}
