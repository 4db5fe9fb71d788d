package covewalk.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.cli.FrontDoor.Run;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The small survey has one item: the joint of R1 and R2 at 4 m, 5 steps where 2 are allowed. */
class PunchCommandTest {

    @TempDir
    Path folder;
    private Path survey;

    @BeforeEach
    void aSurveyWithOneItem() throws IOException {
        survey = SmallSurvey.in(folder.resolve("hall"), 5);
    }

    private Run punch(String... options) {
        List<String> line = new ArrayList<>(List.of("punch", survey.toString()));
        line.addAll(List.of(options));
        return FrontDoor.run(line.toArray(String[]::new));
    }

    /** @param options with blanks between them, and {@code _} for one inside */
    private Run record(String options) {
        return punch(Stream.of(("--item 1 " + options).split(" ")).map(word -> word.replace('_', ' ')).toArray(String[]::new));
    }

    private List<String> written() throws IOException {
        return Files.readAllLines(survey.resolve("punch.csv"));
    }

    @Test
    void listsTheItemsAndWritesNothing() throws IOException {
        Run run = punch();
        assertEquals("""
                  item  where         what   reels    found   state  responsible  due
                     1  C1 at 4.00 m  joint  R1 | R2  beyond  open
                Items: 1, of them 1 open, 0 done, 0 re-inspected, 0 accepted; 0 no longer found
                """, run.out());
        assertEquals("New items got these numbers for this time only: 1. A report fixes them, or recording something of them, where the"
                + " survey's folder can be written.\n", run.err());
        assertEquals(1, run.code());
        assertEquals(List.of("readings.csv", "survey.json"), SmallSurvey.files(survey));
    }

    @Test
    void recordsAndSaysSo() throws IOException {
        Run run = punch("--item", "1", "--responsible", "Ben, fitter", "--due", "2026-12-01", "--clause", "2.3");
        assertEquals("Recorded: item 1\n", run.err());
        assertEquals("""
                  item  where         what   reels    found   state  responsible  due
                     1  C1 at 4.00 m  joint  R1 | R2  beyond  open   Ben, fitter  2026-12-01
                        clause 2.3
                Items: 1, of them 1 open, 0 done, 0 re-inspected, 0 accepted; 0 no longer found
                """, run.out());
        assertEquals(0, run.code());
        assertEquals(List.of("1,,,,,,,,C1,joint,4.000,R1 | R2", "1,2.3,\"Ben, fitter\",2026-12-01,,,,,,,,"), written().subList(1, 3));
    }

    @Test
    void anItemGoesFromOpenToAccepted() throws IOException {
        assertEquals(0, punch("--item", "1", "--done", "2026-11-30 BEN").code());
        assertTrue(punch().out().contains("done"), punch().out());
        punch("--item", "1", "--reinspected", "2026-12-01");
        punch("--item", "1", "--accepted", "2026-12-02 AB", "--note", "new reel, same lot");
        Run run = punch();
        assertEquals(0, run.code(), "what is accepted is closed");
        assertEquals("Items: 1, of them 0 open, 0 done, 0 re-inspected, 1 accepted; 0 no longer found", run.lastLine());
        assertTrue(run.out().contains("done 2026-11-30 BEN; re-inspected 2026-12-01; accepted 2026-12-02 AB; note: new reel, same lot"), run.out());
        punch("--item", "1", "--accepted", "-");
        assertEquals(1, punch().code());
        assertEquals(6, written().size());
    }

    @ParameterizedTest(name = "{0}, then {1}")
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
        # what stands there      | what is to be recorded                           | what is said; nothing where it is recorded
        --done 2026-12-01        | --accepted 2026-11-30_AB                         | Item 1 would be accepted on 2026-11-30 and done only on 2026-12-01.
        --note x                 | --done 2026-12-01 --reinspected 2026-11-30_K     | Item 1 would be re-inspected on 2026-11-30 and done only on 2026-12-01.
        --accepted 2026-12-02_AB | --reinspected 2026-12-03                         | Item 1 would be accepted on 2026-12-02 and re-inspected only on 2026-12-03.
        --reinspected 2026-12-01 | --done 2026-12-04                                | Item 1 would be re-inspected on 2026-12-01 and done only on 2026-12-04.
        --reinspected 2026-12-01 | --done 2026-12-04 --reinspected -                | -
        --done 2026-12-01        | --reinspected 2026-12-01 --accepted 2026-12-01_A | -
        """)
    void daysOfAnItemFollowOneAnother(String before, String now, String said) throws IOException {
        assertEquals(0, record(before).code(), before);
        List<String> log = written();
        Run run = record(now);
        if (said == null) {
            assertEquals("Recorded: item 1\n", run.err());
        } else {
            assertEquals(said + " Correct one of the two days, or clear the one that does not hold any more; nothing was recorded.\n", run.err());
            assertEquals(2, run.code());
            assertEquals(log, written());
        }
    }

    /** A table may have been filled in by hand, or by hands that did not know of this. */
    @Test
    void daysThatStandTheWrongWayRoundAlreadyStopNothingElse() throws IOException {
        punch("--item", "1", "--done", "2026-12-01");
        Files.writeString(survey.resolve("punch.csv"), Files.readString(survey.resolve("punch.csv")) + "1,,,,,,2026-11-01 AB,,,,,\n");
        assertEquals("Recorded: item 1\n", punch("--item", "1", "--note", "asked for the day").err());
        assertEquals(0, punch().code());
    }

    @Test
    void whatWasPutRightIsNoLongerFoundAndKeepsItsNumber() throws IOException {
        punch("--item", "1", "--done", "2026-11-30");
        String log = Files.readString(survey.resolve("readings.csv"));
        Path even = SmallSurvey.in(folder.resolve("even"), 0);
        Files.copy(survey.resolve("punch.csv"), even.resolve("punch.csv"));
        Run run = FrontDoor.run("punch", even.toString());
        assertEquals(0, run.code());
        assertTrue(run.out().contains("1  C1 at 4.00 m  joint  R1 | R2  no longer found  done"), run.out());
        assertTrue(run.out().contains("Now: 0.04 steps, standard uncertainty"), run.out());
        assertTrue(run.out().contains("within (limit 2)."), run.out());
        assertEquals("", run.err());
        assertFalse(log.isEmpty());
    }

    @Test
    void theSameInJson() {
        punch("--item", "1", "--due", "2026-12-01");
        String json = punch("--json").out();
        assertTrue(json.contains("\"item\" : 1"), json);
        assertTrue(json.contains("\"due\" : \"2026-12-01\""), json);
        assertTrue(json.contains("\"numberFixed\" : true"), json);
        assertTrue(json.contains("\"verdict\" : \"beyond\""), json);
        assertTrue(json.contains("\"noLongerFound\" : [ ]"), json);
    }

    @Test
    void oneItemAloneIsShown() {
        assertEquals(1, punch("--item", "1").code());
        Run none = punch("--item", "7");
        assertEquals("--item: there is no item 7. There are: 1.\n", none.err());
        assertEquals(2, none.code());
    }

    @Test
    void nothingIsRecordedOfAnItemThatIsNotThere() throws IOException {
        Run run = punch("--item", "1,7", "--done", "2026-11-30");
        assertEquals("--item: there is no item 7. There are: 1.\n", run.err());
        assertEquals(2, run.code());
        assertFalse(Files.exists(survey.resolve("punch.csv")));
    }

    @Test
    void whatToRecordNeedsItsItem() {
        Run run = punch("--done", "2026-11-30");
        assertEquals("--item is missing: which item --done is for. Give its number, or several with commas between them.\n", run.err());
        assertEquals(2, run.code());
    }

    @Test
    void aSurveyWithoutItemsSaysSo() throws IOException {
        Path even = SmallSurvey.in(folder.resolve("even"), 0);
        assertEquals("Items: 0, of them 0 open, 0 done, 0 re-inspected, 0 accepted; 0 no longer found\n",
                FrontDoor.run("punch", even.toString()).out());
        assertEquals("--item: there is no item 1. This survey has no items.\n",
                FrontDoor.run("punch", even.toString(), "--item", "1", "--note", "x").err());
    }

    @Test
    void whileAnotherProgramWritesNothingIsRecordedAndListingWorks() throws IOException {
        try (FolderLock other = FolderLock.take(survey, new Holder("Covewalk", "ben", "office-pc", "2026-10-05 18:00")).value().orElseThrow()) {
            Run run = punch("--item", "1", "--done", "2026-11-30");
            assertEquals("Somebody else writes in this survey: Covewalk, run by ben on office-pc since 2026-10-05 18:00. Close the survey"
                    + " there, then open it here.\n", run.err());
            assertEquals(2, run.code());
            assertFalse(Files.exists(survey.resolve("punch.csv")));
            assertEquals(1, punch().code());
            assertEquals(survey, other.folder());
        }
    }

    @Test
    void aDamagedLogIsToldAndLeftAsItIs() throws IOException {
        String damaged = "item,due\n1,soon\n";
        Files.writeString(survey.resolve("punch.csv"), damaged);
        for (Run run : List.of(punch(), punch("--item", "1", "--done", "2026-11-30"))) {
            assertEquals("punch.csv:2: due: soon is no date. Write it as 2026-12-01.\n", run.err());
            assertEquals(2, run.code());
        }
        assertEquals(damaged, Files.readString(survey.resolve("punch.csv")));
    }

    @Test
    void aTornLineIsSetAsideBeforeRecordingGoesOn() throws IOException {
        punch("--item", "1", "--note", "first");
        Files.writeString(survey.resolve("punch.csv"), Files.readString(survey.resolve("punch.csv")) + "1,,,2026-1");
        Run run = punch("--item", "1", "--note", "second");
        assertEquals("punch.csv:4: The last line was unfinished, as after a power cut. It was taken out and is kept in set-aside.csv; record"
                + " it again.\nRecorded: item 1\n", run.err());
        assertEquals("1,,,,,,,second,,,,", written().get(3));
    }
}
