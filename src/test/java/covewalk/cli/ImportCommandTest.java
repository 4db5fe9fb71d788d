package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import covewalk.survey.Reading;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImportCommandTest {

    private static final String EXPORT = "x,y\n0.4585,0.4104\n0.4586,0.4105\n0.4587,0.4106\n";

    @TempDir
    Path folder;
    private Path survey;
    private Path file;

    @BeforeEach
    void aSurveyNotYetWalked() throws IOException {
        survey = SmallSurvey.in(folder.resolve("survey"), 0, 0);
        file = Files.writeString(folder.resolve("walk.csv"), EXPORT);
    }

    private Run add(String... options) {
        List<String> args = new ArrayList<>(List.of("import", survey.toString(), file.toString()));
        args.addAll(Arrays.asList(options));
        return FrontDoor.run(args.toArray(String[]::new));
    }

    private List<String> positions() throws IOException {
        return SurveyFolder.at(survey).read().log().stream().map((Reading reading) -> reading.positionM().text()).toList();
    }

    @Test
    void keepsEveryRowAndSaysSo() throws IOException {
        Run run = add("--cove", "C1", "--start", "0.5", "--every", "1");
        assertEquals("Rows: 3. Kept: 3. Already there: 0. Set aside: 0.\n", run.out(), run.err());
        assertEquals(0, run.code());
        assertEquals(List.of("0.5", "1.5", "2.5"), positions());
        assertEquals(EXPORT, Files.readString(survey.resolve("originals").resolve("walk.csv")));
    }

    @ParameterizedTest(name = "{0} and every {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        0.5     | 1      | 0.5    | 1.5    | 2.5
        500 mm  | 250mm  | 0.5    | 0.75   | 1
        1 ft    | 2'     | 0.3048 | 0.9144 | 1.524
        1' 6"   | 6 in   | 0.4572 | 0.6096 | 0.762
        11,5    | -0.5   | 11.5   | 11     | 10.5
        """)
    void takesLengthsAsPeopleOnSitesWriteThem(String start, String every, double first, double second, double third)
            throws IOException {
        Run run = add("--cove", "C1", "--start", start, "--every", every);
        assertEquals(0, run.code(), run.err());
        List<Double> metres = positions().stream().map(Double::valueOf).toList();
        assertEquals(List.of(first, second, third), metres);
    }

    @Test
    void takesPositionsFromAList() throws IOException {
        Path list = Files.writeString(folder.resolve("places.txt"), "0.4\n3.6 m\n4400 mm\n");
        assertEquals(0, add("--cove", "C1", "--positions", list.toString()).code());
        assertEquals(List.of(0.4, 3.6, 4.4), positions().stream().map(Double::valueOf).toList());
    }

    @Test
    void theSameFileAgainAddsNothing() throws IOException {
        add("--cove", "C1", "--start", "0.5", "--every", "1");
        Run again = add("--cove", "C1", "--start", "0.5", "--every", "1");
        assertEquals("Rows: 3. Kept: 0. Already there: 3. Set aside: 0.\n", again.out());
        assertEquals(0, again.code());
        assertEquals(3, positions().size());
    }

    @Test
    void aBadRowIsSetAsideAndTheRestIsKept() throws IOException {
        Files.writeString(file, "x,y\n0.4585,0.4104\n-----,-----\n0.4587,0.4106\n");
        Run run = add("--cove", "C1", "--start", "0.5", "--every", "1");
        assertEquals("Rows: 3. Kept: 2. Already there: 0. Set aside: 1.\n", run.out());
        assertTrue(run.err().startsWith("walk.csv:3: "), run.err());
        assertEquals(3, run.code());
        assertEquals(List.of("0.5", "2.5"), positions());
    }

    @Test
    void aFileWithoutOneGoodRowIsNotDone() throws IOException {
        Files.writeString(file, "x,y\n-----,-----\n");
        assertEquals(2, add("--cove", "C1", "--start", "0.5", "--every", "1").code());
    }

    @Test
    void columnsAreNamedWhereTheirTitlesSayNothing() throws IOException {
        Files.writeString(file, "first,second\n0.4585,0.4104\n");
        Run run = add("--cove", "C1", "--start", "0.5", "--every", "1", "--map", "first=x", "--map", "second=y");
        assertEquals("Rows: 1. Kept: 1. Already there: 0. Set aside: 0.\n", run.out(), run.err());
        assertEquals(0, run.code());
    }

    @Test
    void aFieldThatDoesNotExistIsRefusedAndNothingIsWritten() throws IOException {
        Run run = add("--cove", "C1", "--start", "0.5", "--every", "1", "--map", "x=colour");
        assertTrue(run.err().contains("colour"), run.err());
        assertEquals(2, run.code());
        assertFalse(Files.exists(survey.resolve("originals")));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        --start 1                          | --every is missing: --start and --every go together. A single row needs both too; the distance does not matter then.
        --every 1                          | --start is missing: --start and --every go together. A single row needs both too; the distance does not matter then.
        --start 1 --every 1 --positions p  | --positions and --start with --every say the same thing twice. Give one of them.
        --positions p                      | p: there is no such file. Check the name and the folder you are in.
        """)
    void halfAPlaceIsNoPlace(String options, String words) {
        Run run = add(options.strip().split(" +"));
        assertEquals(words + "\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void aPositionThatIsNoneIsToldWithItsLine() throws IOException {
        Path list = Files.writeString(folder.resolve("places.txt"), "0.4\nby the door\n");
        Run run = add("--cove", "C1", "--positions", list.toString());
        assertTrue(run.err().startsWith("places.txt:2: "), run.err());
        assertEquals(2, run.code());
    }

    @Test
    void withoutPositionsItSaysHowToGiveThem() {
        Run run = add("--cove", "C1");
        assertTrue(run.err().contains("--start") && run.err().contains("--positions"), run.err());
        assertEquals("", run.out());
        assertEquals(2, run.code());
    }

    @Test
    void aSurveyThatAnotherProgramWritesIsLeftAlone() throws IOException {
        try (FolderLock lock = FolderLock.take(survey, new Holder("the other program", "Ada", "tablet-3", "2026-10-05 19:02"))
                .value().orElseThrow()) {
            assertEquals(survey, lock.folder());
            Run run = add("--cove", "C1", "--start", "0.5", "--every", "1");
            assertEquals("Somebody else writes in this survey: the other program, run by Ada on tablet-3 since 2026-10-05 19:02."
                    + " Close the survey there, then open it here.\n", run.err());
            assertEquals(2, run.code());
        }
        assertEquals(List.of(), positions());
    }

    @Test
    void nothingPrintedHoldsTheFoldersPath() {
        Run run = add("--cove", "C1");
        assertFalse((run.out() + run.err()).contains(folder.toString()), run.out() + run.err());
    }
}
