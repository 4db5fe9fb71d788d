package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import covewalk.cli.FrontDoor.Run;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{4}")
    @CsvSource(textBlock = """
        # steps, walked to, limit, exit code, why
        0,       12,        2,     0,         all within
        5,       12,        2,     1,         one joint far beyond
        2,       12,        2,     3,         a joint on the limit is settled by nobody
        0,       7,         2,     3,         the last joint was not read
        5,       7,         2,     1,         beyond outweighs not read
        5,       12,        8,     0,         the limit of the command line goes before the survey's
        """)
    void theExitCodeTellsTheOutcome(double steps, double lastM, String limit, int code, String why) throws IOException {
        SmallSurvey.in(folder, steps, lastM);
        Run run = FrontDoor.run("check", folder.toString(), "--limit", limit);
        assertEquals(code, run.code(), run.out() + run.err());
    }

    @Test
    void theLastLineCountsEveryVerdict() throws IOException {
        SmallSurvey.in(folder, 5);
        assertEquals("1 beyond, 0 unsettled, 1 within, 0 not read", FrontDoor.run("check", folder.toString()).lastLine());
    }

    @Test
    void jsonHoldsTheJointsInWalkingOrder() throws IOException {
        SmallSurvey.in(folder, 5);
        Run run = FrontDoor.run("check", "--json", folder.toString());
        JsonNode joints = new ObjectMapper().readTree(run.out()).at("/coves/0/joints");
        assertEquals(List.of(4.0, 8.0), positions(joints), run.out());
        assertEquals("beyond", joints.at("/0/verdict").asText());
        assertEquals(5.0, joints.at("/0/steps").asDouble(), 0.3);
        assertEquals(1, run.code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--json", "--worst"})
    void whatAnExplanationCannotObeyIsRefused(String option) throws IOException {
        SmallSurvey.in(folder, 5);
        Run run = FrontDoor.run("check", folder.toString(), "--explain", "4", option);
        assertEquals("--explain and " + option + " do not go together: an explanation is a text about one place. Leave one of them out.\n", run.err());
        assertEquals("", run.out());
        assertEquals(2, run.code());
    }

    @Test
    void aLimitThatIsOnlyTriedIsNotSaidToBeTheSpecifications() throws IOException {
        SmallSurvey.in(folder, 5);
        String out = FrontDoor.run("check", folder.toString(), "--limit", "3").out().replaceAll("\\s+", " ");
        assertTrue(out.startsWith("Limit: 3 steps between neighbours, set by whoever gave this command its --limit (the survey's own is 2, set with"
                + " the rest by clause 1)."), out);
    }

    @Test
    void aLimitNearNothingIsNotShownAsNone() throws IOException {
        SmallSurvey.in(folder, 5);
        assertTrue(FrontDoor.run("check", folder.toString(), "--limit", "1e-3").out().startsWith("Limit: 0.001 steps between neighbours"));
        assertTrue(FrontDoor.run("plan", folder.toString(), "--limit", "1e-3").out().replaceAll("\\s+", " ").contains("the limit of 0.001."));
        assertTrue(FrontDoor.run("check", folder.toString(), "--limit", "1e-3", "--language", "de").out().startsWith("Grenze: 0,001 Schritte"));
    }

    @Test
    void rowsThatWereSetAsideAreToldBesideTheVerdicts() throws IOException {
        SmallSurvey.in(folder, 5);
        Files.writeString(folder.resolve("set-aside.csv"), "source,line,column,reason,row\na.csv,2,x,no number,\"1,2\"\na.csv,3,x,no number,\"1,\n3\"\n");
        String out = FrontDoor.run("check", folder.toString()).out().replaceAll("\\s+", " ");
        assertTrue(out.contains("Note: set-aside.csv: Rows that could not be taken: 2."), out);
    }

    @Test
    void aFolderInPlaceOfTheDescriptionIsNamed() throws IOException {
        Files.createDirectories(folder.resolve("survey.json"));
        for (String command : List.of("check", "plan", "punch")) {
            Run run = FrontDoor.run(command, folder.toString());
            assertEquals("survey.json: This is a folder, and a file of this name belongs here. Put the file back in its place.\n", run.err());
            assertEquals(2, run.code());
        }
    }

    /** In the demonstration C1 has a joint and a drift beyond, an unsettled joint and one within. */
    @Test
    void oneCoveAloneIsShownAndCounted() {
        Run run = FrontDoor.run("check", "survey-demo/reading-rooms", "--cove", "C1");
        assertTrue(run.out().contains("Cove C1") && !run.out().contains("Cove C2"), run.out());
        assertEquals("2 beyond, 1 unsettled, 1 within, 0 not read", run.lastLine());
        assertEquals(1, run.code());
        assertEquals(1, FrontDoor.run("check", "survey-demo/reading-rooms", "--cove", "C1", "--json").out().split("\"joints\"", -1).length - 1);
        assertEquals("--cove: there is no cove C9 in this survey. There are: C1, C2, C3, C4, C5.\n",
                FrontDoor.run("check", "survey-demo/reading-rooms", "--cove", "C9").err());
    }

    @Test
    void manyReadingsOfACoveThatIsNotThereAreOneLineWithTheirNumber() throws IOException {
        SmallSurvey.in(folder, 5);
        Path description = folder.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("\"id\": \"C1\"", "\"id\": \"C2\""));
        assertEquals("readings.csv:2: cove: There is no cove C1. Add the cove to the description, or correct its name.\n"
                + "readings.csv:2: cove: The same holds for 24 readings in all.\n", FrontDoor.run("check", folder.toString()).err());
    }

    @Test
    void aDescriptionInAnotherEncodingIsToldWithItsLine() throws IOException {
        SmallSurvey.in(folder, 5);
        Path description = folder.resolve("survey.json");
        Files.writeString(description, Files.readString(description).replace("east wall", "östliche Wand"), Charset.forName("windows-1252"));
        Run run = FrontDoor.run("check", folder.toString());
        assertEquals("survey.json:9: From here on the file is not UTF-8: another program has saved it in another encoding. Open it there,"
                + " save it as UTF-8, and look at its accents and umlauts.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void theWorstJointComesFirstWhenAskedFor() throws IOException {
        SmallSurvey.in(folder, 5);
        Path survey = folder.resolve("survey.json");
        Files.writeString(survey, Files.readString(survey).replace("\"toM\": 4.0", "\"toM\": 2.0").replace("\"fromM\": 4.0", "\"fromM\": 2.0")
                .replace("\"toM\": 8.0", "\"toM\": 4.0").replace("\"fromM\": 8.0", "\"fromM\": 4.0"));
        assertEquals(List.of(2.0, 4.0), positions(joints("check", "--json", folder.toString())));
        assertEquals(List.of(4.0, 2.0), positions(joints("check", "--json", "--worst", folder.toString())));
    }

    private static JsonNode joints(String... args) throws IOException {
        return new ObjectMapper().readTree(FrontDoor.run(args).out()).at("/coves/0/joints");
    }

    private static List<Double> positions(JsonNode joints) {
        return joints.findValues("positionM").stream().map(JsonNode::asDouble).toList();
    }

    @Test
    void theSameSurveyGivesTheSameBytesWhereverItLies() throws IOException {
        Path elsewhere = folder.resolve("a place with spaces");
        SmallSurvey.in(folder, 5);
        SmallSurvey.in(elsewhere, 5);
        assertEquals(FrontDoor.run("check", folder.toString()), FrontDoor.run("check", elsewhere.toString()));
        assertEquals(FrontDoor.run("check", "--json", folder.toString()), FrontDoor.run("check", "--json", elsewhere.toString()));
    }

    @Test
    void nothingPrintedHoldsTheFoldersPath() throws IOException {
        SmallSurvey.in(folder, 5);
        Run run = FrontDoor.run("check", folder.toString());
        assertFalse((run.out() + run.err()).contains(folder.getFileName().toString()), run.out() + run.err());
    }

    @Test
    void aSurveyIsOnlyReadNeverWritten() throws IOException {
        SmallSurvey.in(folder, 5);
        List<String> before = SmallSurvey.files(folder);
        FrontDoor.run("check", folder.toString());
        assertEquals(before, SmallSurvey.files(folder));
    }

    @Test
    void aReadOnlyFolderIsReadLikeAnyOther() throws IOException {
        SmallSurvey.in(folder, 5);
        assertTrue(folder.toFile().setWritable(false));
        try {
            assertEquals(1, FrontDoor.run("check", folder.toString()).code());
        } finally {
            assertTrue(folder.toFile().setWritable(true));
        }
    }

    @Test
    void aLogThatASealNamesIsMissed() throws IOException {
        SmallSurvey.in(folder, 5);
        FrontDoor.run("report", folder.toString(), "--out", folder.resolve("out").toString());
        Files.delete(folder.resolve("readings.csv"));
        Run run = FrontDoor.run("check", folder.toString());
        assertEquals("readings.csv: The log is not there, though a seal of this survey shows that there was one."
                + " Put it back from a copy.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void aFolderInTheLogsPlaceIsNamed() throws IOException {
        SmallSurvey.in(folder, 5);
        Files.delete(folder.resolve("readings.csv"));
        Files.createDirectory(folder.resolve("readings.csv"));
        Run run = FrontDoor.run("check", folder.toString());
        assertEquals("readings.csv: This is a folder, and the log is a file. Put the log back in its place.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void aMissingFolderIsToldInOneSentence() {
        Run run = FrontDoor.run("check", folder.resolve("nowhere").toString());
        assertEquals("nowhere: There is no such folder. Give the folder of a survey.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void aFileGivenAsFolderIsToldLikewise() throws IOException {
        Path file = Files.writeString(folder.resolve("survey.json"), "{}");
        Run run = FrontDoor.run("check", file.toString());
        assertEquals("survey.json is a file. Give the folder of a survey.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void aFolderWithoutADescriptionIsNoSurvey() {
        Run run = FrontDoor.run("check", folder.toString());
        assertEquals("survey.json: The survey has no description. Give the folder of a survey, or describe it first.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void allDamageIsToldAtOnceWithItsLineAndColumn() throws IOException {
        SmallSurvey.in(folder, 0);
        Files.writeString(folder.resolve("readings.csv"), SmallSurvey.HEADER + """
                1,C1,0.5,,,,,,,,0.2600,0.5300,,,,
                2,C1,here,,,,,,,,0.2600,0.5300,,,,
                3,C9,1.5,,,,,,,,0.2600,0.5300,,,,
                """);
        Run run = FrontDoor.run("check", folder.toString());
        List<String> lines = run.err().lines().toList();
        assertEquals(2, lines.size(), run.err());
        assertTrue(lines.get(0).startsWith("readings.csv:3: position_m: here "), run.err());
        assertTrue(lines.get(1).startsWith("readings.csv:4: cove: "), run.err());
        assertEquals("", run.out());
        assertEquals(2, run.code());
    }

    @Test
    void aLogThatMayNotBeReadIsTold() throws IOException {
        SmallSurvey.in(folder, 0);
        Path log = folder.resolve("readings.csv");
        assumeFalse(log.toFile().setReadable(false) && Files.isReadable(log), "this account may read everything");
        Run run = FrontDoor.run("check", folder.toString());
        assertEquals("readings.csv: access is denied. Put that right and run the command again.\n", run.err());
        assertEquals(2, run.code());
    }
}
