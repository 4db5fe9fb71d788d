package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code check} says of surveys with next to nothing in them, and of numbers that cannot be. */
class PoorEvidenceCheckTest {

    @TempDir
    Path folder;

    @BeforeEach
    void describe() throws IOException {
        SmallSurvey.in(folder, 0);
    }

    private Run readings(String... rows) throws IOException {
        StringBuilder log = new StringBuilder(SmallSurvey.HEADER);
        for (int i = 0; i < rows.length; i++) {
            log.append(i + 1).append(",C1,").append(rows[i]).append(",,,,\n");
        }
        Files.writeString(folder.resolve("readings.csv"), log);
        return FrontDoor.run("check", folder.toString());
    }

    private Run described(String field, String value) throws IOException {
        Path survey = folder.resolve("survey.json");
        Files.writeString(survey, Files.readString(survey).replace(field, value));
        return FrontDoor.run("check", folder.toString());
    }

    @Test
    void noReadingAtAllIsNotRead() throws IOException {
        assertOutcome(3, "0 beyond, 0 unsettled, 0 within, 2 not read", readings());
    }

    @Test
    void oneReadingIsNotRead() throws IOException {
        assertOutcome(3, "0 beyond, 0 unsettled, 0 within, 2 not read", readings("1,,,,,,,,0.2600,0.5300"));
    }

    @Test
    void twoReelsOfThreeJudgeOneJoint() throws IOException {
        assertOutcome(3, "0 beyond, 0 unsettled, 1 within, 1 not read",
                readings("1,,,,,,,,0.2600,0.5300", "5,,,,,,,,0.2600,0.5300"));
    }

    /** Nine steps apart at each place, and a difference of 1.5 between their means. */
    @Test
    void repeatsThatDifferWildlySettleNothingAndAreTold() throws IOException {
        Run run = readings("1,,,,,,,,0.26000,0.53000", "1,,,,,,,,0.27000,0.53000", "1,,,,,,,,0.25000,0.53000",
                "5,,,,,,,,0.26000,0.53000", "5,,,,,,,,0.25500,0.53000", "5,,,,,,,,0.26500,0.53000");

        assertOutcome(3, "0 beyond, 1 unsettled, 0 within, 1 not read", run);
        assertTrue(run.out().replaceAll("\\s+", " ").contains("repeated readings vary by"), run.out());
    }

    @Test
    void readingsThatAreAllTheSameAreWithin() throws IOException {
        assertOutcome(0, "0 beyond, 0 unsettled, 2 within, 0 not read",
                readings("1,,,,,,,,0.2600,0.5300", "5,,,,,,,,0.2600,0.5300", "9,,,,,,,,0.2600,0.5300"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
        # row; what is said
        1,,,,,,,,NaN,0.53; u_prime: NaN is no number. Write digits and one decimal mark.
        1,,,,,,,,0.26,Infinity; v_prime: Infinity is no number. Write digits and one decimal mark.
        NaN,,,,,,,,0.26,0.53; position_m: NaN is no number. Write digits and one decimal mark.
        """)
    void whatIsNoNumberIsRefusedInTheLog(String row, String said) throws IOException {
        Run run = readings(row);

        assertEquals("readings.csv:2: " + said + "\n", run.err());
        assertEquals(2, run.code());
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = ';', textBlock = """
        # as it was; as it is; line; what is said
        "repeatabilityUv": 0.0003; "repeatabilityUv": 0; 3; setups[0].repeatabilityUv: 0 is not above 0 and at most 0.1.
        "neighbourSteps": 2.0; "neighbourSteps": 0; 5; limits.neighbourSteps: 0 is not above 0 and at most 100.
        "neighbourSteps": 2.0; "neighbourSteps": 1000; 5; limits.neighbourSteps: 1000 is not above 0 and at most 100.
        "setBy"; "errorRate": 0, "setBy"; 5; limits.errorRate: 0 is not between 0 and 0.5.
        "setBy"; "errorRate": 1, "setBy"; 5; limits.errorRate: 1 is not between 0 and 0.5.
        """, quoteCharacter = '\0')
    void whatCannotBeIsRefusedInTheDescription(String was, String is, int line, String said) throws IOException {
        Run run = described(was, is);

        assertEquals("survey.json:" + line + ": " + said + " Correct it.\n", run.err());
        assertEquals(2, run.code());
    }

    @ParameterizedTest
    @CsvSource({"0", "1000", "NaN", "-1", "Infinity"})
    void aLimitThatCannotBeIsRefusedOnTheCommandLine(String limit) {
        Run run = FrontDoor.run("check", folder.toString(), "--limit", limit);

        assertEquals("covewalk check: --limit: " + limit + " is no number of steps above 0, up to 100. Write it like 2 or 2.5.\n",
                run.err());
        assertEquals(2, run.code());
    }

    /** Two meters at one place, one of them off by nine steps: each is compared with itself alone. */
    @Test
    void twoSetUpsAtOnePlaceAreNotMixed() throws IOException {
        described("\"setups\": [", "\"setups\": [ { \"id\": \"B\", \"meter\": \"N\", \"repeatabilityUv\": 0.0003 },");

        assertOutcome(3, "0 beyond, 0 unsettled, 1 within, 1 not read", readings("3,,A,,,,,,0.2600,0.5300",
                "3,,B,,,,,,0.2700,0.5300", "5,,A,,,,,,0.2600,0.5300", "5,,B,,,,,,0.2700,0.5300"));
    }

    private static void assertOutcome(int code, String lastLine, Run run) {
        assertEquals(lastLine, run.lastLine(), run.err());
        assertEquals(code, run.code(), run.out());
    }
}
