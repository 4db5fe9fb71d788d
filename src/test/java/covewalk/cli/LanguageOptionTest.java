package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code --language de} changes, and what it leaves. */
class LanguageOptionTest {

    @TempDir
    Path folder;
    private Path survey;

    /** One joint beyond; a minute after the light came on, which is worth a warning. */
    @BeforeEach
    void aSurveyWithAWarning() throws IOException {
        survey = SmallSurvey.in(folder.resolve("survey"), 5);
        describe("\"limits\":", "\"visit\": { \"minutesOn\": 1 }, \"limits\":");
    }

    private void describe(String instead, String of) throws IOException {
        Path description = survey.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace(instead, of));
    }

    private Run run(String command, String... more) {
        String[] line = new String[more.length + 2];
        line[0] = command;
        line[1] = survey.toString();
        System.arraycopy(more, 0, line, 2, more.length);
        return FrontDoor.run(line);
    }

    @Test
    void checksInGermanWithTheSameExitCode() {
        Run german = run("check", "--language", "de");
        assertEquals("1 darüber, 0 offen, 1 innerhalb, 0 nicht gemessen", german.lastLine());
        assertTrue(german.out().contains("Das Licht war erst seit 1 Minuten an."), german.out());
        assertEquals(run("check").code(), german.code());
    }

    @Test
    void explainsInGerman() {
        Run german = run("check", "--explain", "4", "--language", "de");
        assertTrue(german.out().startsWith("Voute C1, 4,00 m (13 ft 1 1/2 in), Stoß, R1 | R2: darüber."), german.out());
    }

    @Test
    void jsonIsTheSameInEveryLanguageAndOnlyTheWarningsBesideItAreNot() {
        Run german = run("check", "--json", "--language", "de");
        assertEquals(run("check", "--json").out(), german.out());
        assertTrue(german.err().contains("erst seit 1 Minuten"), german.err());
    }

    @Test
    void reportsInGerman() throws IOException {
        Path out = folder.resolve("out");
        Run german = run("report", "--out", out.toString(), "--language", "de");
        assertTrue(german.err().contains("erst seit 1 Minuten"), german.err());
        assertEquals("1 darüber, 0 offen, 1 innerhalb, 0 nicht gemessen", german.lastLine());
        assertTrue(Files.readString(out.resolve("punch-list.html")).contains("Mängelliste"));
        assertTrue(Files.readString(out.resolve("punch-list.csv")).contains(",joint,beyond,4.000,"));
    }

    @Test
    void plansInGerman() {
        Run german = run("plan", "--language", "de");
        assertTrue(german.out().startsWith("Allgemeine Hinweise."), german.out());
        assertTrue(german.err().contains("erst seit 1 Minuten"), german.err());
    }

    @Test
    void whatCannotBeIsToldInGermanToo() throws IOException {
        describe("\"toM\": 12.0", "\"toM\": 13.0");
        for (String command : new String[] {"check", "plan"}) {
            Run german = run(command, "--language", "de");
            assertTrue(german.err().contains("Die Einbaustrecke endet bei 13 m"), german.err());
            assertEquals(2, german.code());
        }
    }

    @Test
    void aDamagedLogOfItemsIsToldInGermanToo() throws IOException {
        Files.writeString(survey.resolve("punch.csv"), "item,due\n1,soon\n");
        for (Run german : List.of(run("punch", "--language", "de"), run("report", "--out", folder.resolve("out").toString(), "--language", "de"))) {
            assertEquals("punch.csv:2: due: soon ist kein Datum. Schreiben wie 2026-12-01.\n", german.err());
            assertEquals(2, german.code());
        }
    }

    @Test
    void whatCouldNotBeKeptIsToldInGermanOnScreenAndOnPaper() throws IOException {
        Files.writeString(survey.resolve("punch.csv"), "item,due\n");
        String why = "Die Datei hat keine Spalte cove, die hier gebraucht wird.";
        Run punch = run("punch", "--item", "1", "--due", "2026-12-01", "--language", "de");
        assertTrue(punch.err().startsWith("punch.csv:1: cove: " + why), punch.err());
        assertEquals(2, punch.code());
        Run report = run("report", "--out", folder.resolve("out").toString(), "--language", "de");
        assertTrue(report.err().contains(why), report.err());
        assertFalse(report.err().contains("The file"), report.err());
    }

    @Test
    void isEnglishUnlessAskedWhateverTheMachineSpeaks() {
        Locale machine = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Run plain = run("check");
            assertEquals("1 beyond, 0 unsettled, 1 within, 0 not read", plain.lastLine());
            assertFalse(plain.out().contains("Minuten"), plain.out());
            assertEquals(plain, run("check", "--language", "en"));
        } finally {
            Locale.setDefault(machine);
        }
    }
}
