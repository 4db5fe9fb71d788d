package covewalk.app.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MemoryFileTest {

    @TempDir
    Path home;

    @Test
    void whatIsRememberedComesBack() {
        Memory memory = new Memory(new Settings(Theme.CONTRAST, 150, Locale.GERMAN, true, false),
                List.of(home.resolve("Baustelle Süd"), home.resolve("b")), Place.WALK, "xy 5 lux",
                Set.of(home.resolve("Baustelle Süd")));
        MemoryFile file = new MemoryFile(home.resolve("not there yet").resolve("app.properties"));
        file.write(memory);
        assertEquals(memory, file.read());
    }

    @Test
    void aFirstStartIsDarkAndKnowsNoSurvey() {
        Memory memory = new MemoryFile(home.resolve("none")).read();
        assertEquals(Theme.DARK, memory.settings().theme());
        assertEquals(List.of(), memory.recent());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "theme=plaid\ntext=99999\nplace=attic\n", "\\u12", "survey.0=\\u0000\n", "= = =\n"})
    void nonsenseIsLeftAside(String content) throws IOException {
        Path file = Files.writeString(home.resolve("app.properties"), content);
        Memory memory = new MemoryFile(file).read();
        assertEquals(Theme.DARK, memory.settings().theme());
        assertEquals(Place.SURVEYS, memory.place());
        assertEquals(List.of(), memory.recent());
    }

    @Test
    void whereItCannotBeWrittenNothingHappens() throws IOException {
        Path inTheWay = Files.writeString(home.resolve("file"), "");
        new MemoryFile(inTheWay.resolve("app.properties")).write(Memory.blank());
        assertEquals("", Files.readString(inTheWay));
    }

    @ParameterizedTest
    @CsvSource({
            "Linux, .config/covewalk/app.properties",
            "Mac OS X, Library/Application Support/covewalk/app.properties",
            "Windows 11, covewalk/app.properties"})
    void liesWhereTheSystemKeepsSuchFiles(String system, String where) {
        MemoryFile.of(Map.of(), system, home).write(Memory.blank());
        assertEquals(true, Files.exists(home.resolve(where)));
    }

    @Test
    void theLatestSurveyStandsFirstAndOnlyOnce() {
        Memory memory = Memory.blank().opened(home.resolve("a")).opened(home.resolve("b")).opened(home.resolve("a"));
        assertEquals(List.of(home.resolve("a"), home.resolve("b")), memory.recent());
    }

    @Test
    void aSurveyThatIsForgottenTakesWithItWhatWasChosenForIt() {
        Path a = home.resolve("a");
        Memory memory = Memory.blank().opened(a).withDrift(a, true);
        assertEquals(Set.of(a), memory.opened(home.resolve("b")).withoutDrift());
        assertEquals(Set.of(), memory.withDrift(a, false).withoutDrift());
        assertEquals(Set.of(), memory.without(a).opened(a).withoutDrift());
    }
}
