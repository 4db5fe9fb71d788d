package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A second visit: the joint at 4 m was 5 steps apart on the first. */
class RetestTest {

    @TempDir
    Path folder;
    private Path first;

    @BeforeEach
    void aFirstVisitWithItsReport() throws IOException {
        first = SmallSurvey.in(folder.resolve("first walk"), 5);
        report(first);
        FrontDoor.run("punch", first.toString(), "--item", "1", "--responsible", "Ben");
    }

    private Path second(double steps, String follows) throws IOException {
        Path second = SmallSurvey.in(folder.resolve("second"), steps);
        Path description = second.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"setups\"",
                "\"visit\": { \"date\": \"2026-12-01\", \"minutesOn\": 45, \"follows\": \"" + follows + "\" }, \"setups\""));
        return second;
    }

    private Run report(Path survey) {
        return FrontDoor.run("report", survey.toString(), "--out", folder.resolve("out").toString());
    }

    private String written(String file) throws IOException {
        return Files.readString(folder.resolve("out").resolve(file));
    }

    private String firstRow() throws IOException {
        return written("punch-list.csv").lines().skip(1).findFirst().orElseThrow();
    }

    @Test
    void whatWasPutRightIsShownBeforeAndNow() throws IOException {
        Path second = second(0, "first walk");
        report(second);
        String page = written("punch-list.html").replaceAll("\\s+", " ");
        assertTrue(page.contains("Item 1: C1 at 4.00 m, joint, R1 | R2: no longer found. Before (date not noted): 5."), page);
        assertTrue(page.contains("Now: 0.0"), page);
        assertTrue(page.contains("responsible Ben"), page);
        assertTrue(firstRow().startsWith("1,C1,,joint,no-longer-found,4.000,"), firstRow());
        assertEquals(List.of("1,,Ben,,,,,,C1,joint,4.000,R1 | R2"), Files.readAllLines(second.resolve("punch.csv")).subList(1, 2));
    }

    @Test
    void whatIsStillThereKeepsItsNumberAndShowsBoth() throws IOException {
        report(second(4, "first walk"));
        assertTrue(firstRow().startsWith("1,C1,east wall,joint,beyond,4.000,"), firstRow());
        assertTrue(firstRow().matches(".*,Ben,,,,,,yes,open,,beyond,[45]\\.\\d+,0\\.\\d+"), firstRow());
        assertTrue(written("punch-list.html").contains("Before (date not noted): "));
        assertTrue(written("punch-list.json").contains("\"before\" : {"));
        Run punch = FrontDoor.run("punch", folder.resolve("second").toString());
        assertTrue(punch.out().contains("Before (date not noted): "), punch.out());
    }

    @Test
    void aReplacedReelThatIsStillBeyondShowsWhatLayThereBefore() throws IOException {
        Path second = second(4, "first walk");
        Path description = second.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"R2\"", "\"R2b\""));
        report(second);
        String page = written("punch-list.html").replaceAll("\\s+", " ");
        assertTrue(page.contains("Before (date not noted), with R1 | R2 there: 5."), page);
        assertTrue(page.contains("Now, with R1 | R2b there: 4."), "what became of item 1: " + page);
        assertFalse(page.contains("nothing was found or read there"), page);
    }

    @Test
    void aPlaceThatWasNotReadAgainIsNotSaidToBePutRight() throws IOException {
        Path second = second(5, "first walk");
        Path log = second.resolve("readings.csv");
        Files.write(log, Files.readAllLines(log).subList(0, 5));
        Run punch = FrontDoor.run("punch", second.toString());
        assertTrue(punch.out().contains("1  C1 at 4.00 m  joint  R1 | R2  not read this time  open"), punch.out());
        assertTrue(punch.out().endsWith("; 0 no longer found; 1 not read this time\n"), punch.out());
        assertEquals(3, punch.code());
        report(second);
        assertTrue(written("punch-list.csv").contains("1,C1,,joint,not-read,4.000,"), written("punch-list.csv"));
    }

    @Test
    void theTwoVisitsAreNeverMixed() throws IOException {
        report(second(4, ""));
        String figures = firstRow().split("uv-circle")[0];
        report(second(4, "first walk"));
        assertEquals(figures, firstRow().split("uv-circle")[0]);
    }

    @Test
    void aDayOfTheVisitBeforeGoesBeforeThoseOfNow() throws IOException {
        FrontDoor.run("punch", first.toString(), "--item", "1", "--done", "2026-12-01");
        Run run = FrontDoor.run("punch", second(5, "first walk").toString(), "--item", "1", "--accepted", "2026-11-30 AB");
        assertTrue(run.err().startsWith("Item 1 would be accepted on 2026-11-30 and done only on 2026-12-01."), run.err());
        assertEquals(2, run.code());
    }

    @Test
    void nothingIsWrittenInTheEarlierSurvey() throws IOException {
        List<String> before = SmallSurvey.files(first);
        String log = Files.readString(first.resolve("punch.csv"));
        report(second(0, "first walk"));
        assertEquals(before, SmallSurvey.files(first));
        assertEquals(log, Files.readString(first.resolve("punch.csv")));
    }

    @Test
    void anEarlierSurveyThatIsNotThereIsMissed() throws IOException {
        Run run = report(second(5, "gone"));
        assertTrue(run.err().contains("The earlier survey gone does not lie beside this one, so nothing is said of before. Put its folder"
                + " there, or correct the name.\n"), run.err());
        assertEquals(1, run.code());
        assertTrue(written("punch-list.html").contains("The earlier survey gone does not lie beside this one"));
    }

    /** The table says it as a note, and beside JSON it goes to the error output; in the words of the report. */
    @Test
    void checkMissesItToo() throws IOException {
        String survey = second(5, "gone").toString();
        String missed = "survey.json: visit.follows: The earlier survey gone does not lie beside this one, so nothing is said of before.";
        assertTrue(FrontDoor.run("check", survey).out().replaceAll("\\s+", " ").contains("Note: " + missed));
        assertTrue(FrontDoor.run("check", survey, "--json").err().startsWith(missed));
        Files.writeString(first.resolve("punch.csv"), "item,due\n1,soon\n");
        assertTrue(FrontDoor.run("check", second(5, "first walk").toString(), "--json").err().startsWith("The earlier survey first walk cannot be"
                + " read, so nothing is said of before. There it says: punch.csv:2: due: soon is no date."));
    }

    @Test
    void checkSaysNothingOfAnEarlierSurveyThatIsThere() throws IOException {
        assertEquals("", FrontDoor.run("check", second(5, "first walk").toString(), "--json").err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../first walk", "..", ".", "/tmp", "a/../first walk", "C:first walk", "second/../first walk"})
    void onlyAPlainNameIsLookedFor(String trick) throws IOException {
        Run run = report(second(5, trick));
        assertTrue(run.err().contains("which is no plain name of a folder"), run.err());
        assertFalse(written("punch-list.html").contains("Before ("), "nothing was read there");
    }

    @Test
    void aSurveyDoesNotFollowItself() throws IOException {
        assertTrue(report(second(5, "second")).err().contains("This survey names itself as the one it follows."));
    }

    @Test
    void anEarlierSurveyThatIsDamagedIsToldAndTheReportMade() throws IOException {
        Files.writeString(first.resolve("punch.csv"), "item,due\n1,soon\n");
        Run run = report(second(5, "first walk"));
        assertTrue(run.err().contains("The earlier survey first walk cannot be read, so nothing is said of before. There it says: punch.csv:2: due:"
                + " soon is no date. Write it as 2026-12-01. Put that right there.\n"), run.err());
        assertEquals(1, run.code());
    }

    @Test
    void anEarlierSurveyThatTheDiskWithholdsStopsNothing() throws IOException {
        Path second = second(5, "first walk");
        Path log = first.resolve("readings.csv");
        Files.delete(log);
        Files.createSymbolicLink(log, log.getFileName()); // leads to itself, so no system can open it
        Run run = report(second);
        assertTrue(run.err().contains("The earlier survey first walk cannot be read, so nothing is said of before. There it says: The disk does"
                + " not do it: "), run.err());
        assertEquals(1, run.code());
        assertEquals(1, FrontDoor.run("check", second.toString()).code());
    }

    @Test
    void whatIsWrongThereIsToldInTheLanguageOfTheReport() throws IOException {
        Path description = first.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"lengthM\": 12.0", "\"lengthM\": 11.5"));
        FrontDoor.run("report", second(5, "first walk").toString(), "--out", folder.resolve("out").toString(), "--language", "de");
        String page = written("punch-list.html").replaceAll("\\s+", " ");
        assertTrue(page.contains("Die frühere Begehung first walk kann nicht gelesen werden, deshalb wird von vorher nichts gesagt. Dort heißt es: survey.json:"), page);
        assertTrue(page.contains("endet bei 12 m, und die Voute ist 11,5 m lang."), page);
        assertFalse(page.contains("Correct one of them"), page);
    }
}
