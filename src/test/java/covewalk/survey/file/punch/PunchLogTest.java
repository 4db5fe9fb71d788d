package covewalk.survey.file.punch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Seen;
import covewalk.survey.file.SurveyText;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.NotKept;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.seal.Seal;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PunchLogTest {

    private static final String HEADER = "item,clause,responsible,due,done,reinspected,accepted,note,cove,kind,position_m,reels";
    private static final PunchPlace JOINT = PunchPlace.of("C1", "joint", 5, List.of("R1", "R2"));

    @TempDir
    private Path folder;

    private void write(String text) throws IOException {
        Files.writeString(folder.resolve("punch.csv"), text, UTF_8);
    }

    private String written() throws IOException {
        return Files.readString(folder.resolve("punch.csv"), UTF_8);
    }

    private PunchStates read() throws IOException {
        Outcome<PunchStates> read = PunchLog.read(folder);
        assertEquals("", Seen.all(read.problems()));
        return read.value().orElseThrow();
    }

    private PunchStates add(PunchChange... changes) throws IOException {
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow();
                PunchLog log = PunchLog.open(lock).value().orElseThrow()) {
            return log.append(Arrays.asList(changes));
        }
    }

    @Test
    void withoutAFileNothingIsRecordedAndNothingIsWritten() throws IOException {
        assertEquals(PunchStates.NONE, read());
        assertEquals(PunchStates.NONE, add());
        assertFalse(Files.exists(folder.resolve("punch.csv")));
    }

    @Test
    void whatIsRecordedIsReadBack() throws IOException {
        PunchStates kept = add(PunchChange.of(1).at(JOINT), PunchChange.of(1).with(PunchColumn.RESPONSIBLE, "Ben, \"the\" fitter")
                .with(PunchColumn.DUE, "2026-12-01"));
        assertEquals(HEADER + """

                1,,,,,,,,C1,joint,5.000,R1 | R2
                1,,"Ben, ""the"" fitter",2026-12-01,,,,,,,,
                """, written());
        assertEquals(kept, read());
        assertEquals("Ben, \"the\" fitter", kept.item(1).orElseThrow().text(PunchColumn.RESPONSIBLE));
        assertEquals(JOINT, kept.item(1).orElseThrow().place().orElseThrow());
    }

    @Test
    void aRowChangesWhatItSaysAndAHyphenClears() throws IOException {
        write(HEADER + """

                1,2.3,Ann,2026-12-01,2026-11-30,,,first,C1,joint,5,R1 | R2
                1,,Ben,,-,,,,,,,
                """);
        PunchState state = read().item(1).orElseThrow();
        assertEquals("2.3 Ben 2026-12-01  first", String.join(" ", state.text(PunchColumn.CLAUSE), state.text(PunchColumn.RESPONSIBLE),
                state.text(PunchColumn.DUE), state.text(PunchColumn.DONE), state.text(PunchColumn.NOTE)));
        assertEquals(PunchStage.OPEN, state.stage());
    }

    @ParameterizedTest(name = "{0} {1} {2}: {3}")
    @CsvSource(textBlock = """
        # done,    reinspected,   accepted,      stage
        '',         '',            '',            OPEN
        2026-11-30, '',            '',            DONE
        2026-11-30, 2026-12-01 KM, '',            REINSPECTED
        2026-11-30, 2026-12-01,    2026-12-02 AB, ACCEPTED
        '',         '',            2026-12-02 AB, ACCEPTED
        """)
    void theStageIsTheFarthestReached(String done, String reinspected, String accepted, PunchStage stage) {
        PunchChange change = PunchChange.of(1).with(PunchColumn.DONE, done).with(PunchColumn.REINSPECTED, reinspected)
                .with(PunchColumn.ACCEPTED, accepted);
        assertEquals(stage, PunchStates.NONE.after(List.of(change)).item(1).orElseThrow().stage());
    }

    @Test
    void theNextNumberIsAboveAllThatWereEverGiven() throws IOException {
        assertEquals(1, PunchStates.NONE.next());
        write(HEADER + "\n7,,,,,,,,,,,\n3,,,,,,,,,,,\n");
        assertEquals(8, read().next());
    }

    @Test
    void columnsGoByNameAndUnknownOnesAreKept() throws IOException {
        write("\uFEFFnote,crew,ITEM,done\r\nlook,night,4,\r\n");
        add(PunchChange.of(4).with(PunchColumn.DONE, "2026-11-30"));
        assertEquals("\uFEFFnote,crew,ITEM,done\r\nlook,night,4,\r\n,,4,2026-11-30\r\n", written());
        assertEquals("look", read().item(4).orElseThrow().text(PunchColumn.NOTE));
    }

    @Test
    void aRowThatTheHeaderHasNoColumnForIsNotWritten() throws IOException {
        String short10 = "item,note\n1,look\n";
        write(short10);
        NotKept refused = assertThrows(NotKept.class, () -> add(PunchChange.of(2).at(JOINT)));
        assertEquals("punch.csv:1: cove: The file has no column cove, which this needs. Add it to the header line and to the rows, then"
                + " record it again; nothing was written.", refused.problem().inFull(Locale.ROOT));
        assertEquals(short10, written());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
        0,,,,,,,,,,,                          | R punch.csv:2: item: 0 is no item number. Write a whole number from 1 to 999999.
        1.5,,,,,,,,,,,                        | R punch.csv:2: item: 1.5 is no item number. Write a whole number from 1 to 999999.
        ,,,,,,,look,,,,                       | R punch.csv:2: item: This is empty. Fill it in.
        1,,,soon,,,,,,,,                      | R punch.csv:2: due: soon is no date. Write it as 2026-12-01.
        1,,,2026-02-30,,,,,,,,                | R punch.csv:2: due: There is no day 2026-02-30. Look at its month and its day again.
        1,,,,30.11.2026,,,,,,,                | R punch.csv:2: done: 30.11.2026 is no date, alone or with a space and initials behind it. Write it as 2026-12-01 or 2026-12-01 AB.
        1,,,,,,2026-12-02,,,,,                | R punch.csv:2: accepted: 2026-12-02 is no date with initials behind it. Write it as 2026-12-02 AB.
        1,,,,,,,,C1,joint,,R1                 | R punch.csv:2: position_m: Cove, kind, position_m and reels say together which place the item is. Fill in all four, or none of them.
        1,,,,,,,,C1,joint,five,R1             | R punch.csv:2: position_m: five is no number. Write digits and one decimal mark.
        1,2                                   | R punch.csv:2: This row has 2 cells and the header has 12. Compare the commas with a row above.
        1,a"b,,,,,,,,,,                       | R punch.csv:2: clause: There is a quotation mark in the middle of this cell. Put the whole cell in quotation marks and double the one inside.
        """)
    void aDamagedRowIsToldWithItsPlace(String row, String told) throws IOException {
        write(HEADER + "\n" + row.strip() + "\n");
        Outcome<PunchStates> read = PunchLog.read(folder);
        assertTrue(read.refused());
        assertEquals(told, Seen.all(read.problems()));
    }

    @Test
    void allProblemsAreToldAtOnceAndNothingIsWritten() throws IOException {
        String damaged = HEADER + "\nx,,,,,,,,,,,\n1,,,,,,,,C1,joint,5,R1\n1,,,,,,,,C1,joint,9,R1\n2,,,never,,,,,,,,\n";
        write(damaged);
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            assertEquals("""
                    R punch.csv:2: item: x is no item number. Write a whole number from 1 to 999999.
                    R punch.csv:4: item: Item 1 stands for another place since line 3. Give this place a number of its own.
                    R punch.csv:5: due: never is no date. Write it as 2026-12-01.""", Seen.all(PunchLog.open(lock).problems()));
        }
        assertEquals(damaged, written());
    }

    @Test
    void aFileOfAnotherEncodingIsRefused() throws IOException {
        Files.write(folder.resolve("punch.csv"), (HEADER + "\n1,,Müller,,,,,,,,,\n").getBytes(Charset.forName("windows-1252")));
        assertTrue(Seen.all(PunchLog.read(folder).problems()).startsWith("R punch.csv:2: responsible: This text is not UTF-8"));
        Files.write(folder.resolve("punch.csv"), (HEADER + "\n").getBytes(Charset.forName("UTF-16")));
        assertTrue(Seen.all(PunchLog.read(folder).problems()).startsWith("R punch.csv:1: The log is not UTF-8 any more"));
    }

    @Test
    void aSealedLogThatIsGoneIsMissed() throws IOException {
        SurveyText.folder(folder, "{}\n", null);
        add(PunchChange.of(1).at(JOINT));
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            Seal.issue(lock);
        }
        Files.delete(folder.resolve("punch.csv"));
        assertEquals("R punch.csv: The log is not there, though a seal of this survey shows that there was one. Put it back from a copy.",
                Seen.all(PunchLog.read(folder).problems()));
    }

    @Test
    void wherePowerIsCutTheRowsBeforeStayAndRecordingGoesOn() throws IOException {
        add(PunchChange.of(1).at(JOINT), PunchChange.of(2).with(PunchColumn.NOTE, "Tür, links"));
        byte[] whole = Files.readAllBytes(folder.resolve("punch.csv"));
        int first = HEADER.length() + 1 + "1,,,,,,,,C1,joint,5.000,R1 | R2\n".length();
        for (int length = 0; length < whole.length; length++) {
            Files.write(folder.resolve("punch.csv"), Arrays.copyOf(whole, length));
            assertFalse(PunchLog.read(folder).refused(), "after " + length + " bytes");
            PunchStates states = add(PunchChange.of(3).with(PunchColumn.NOTE, "after"));
            assertEquals(length >= first, states.item(1).isPresent(), "after " + length + " bytes");
            assertEquals(states, read());
            assertEquals(3, read().all().get(states.all().size() - 1).item());
        }
    }

    @Test
    void aTornLineIsSetAsideInWords() throws IOException {
        write(HEADER + "\n1,,,,,,,look,,,,\n2,,Be");
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            Outcome<PunchLog> opened = PunchLog.open(lock);
            assertEquals("W punch.csv:3: The last line was unfinished, as after a power cut. It was taken out and is kept in"
                    + " set-aside.csv; record it again.", Seen.all(opened.problems()));
            opened.value().orElseThrow().close();
        }
        assertEquals(HEADER + "\n1,,,,,,,look,,,,\n", written());
        assertEquals("source,line,column,reason,row\npunch.csv,3,,\"unfinished last line, as after a power cut\",\"2,,Be\"\n",
                Files.readString(folder.resolve("set-aside.csv")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK(\"http://x\")", "+1", "-1", "@x", "'quoted'", "a,b;\"c\"", " <script>", "漢字 \uD83D\uDCA1", "--"})
    void noTextRunsInASpreadsheetAndAllComeBack(String hostile) throws IOException {
        PunchPlace place = PunchPlace.of(hostile, "joint", 1, List.of(hostile, "R2"));
        add(PunchChange.of(1).at(place).with(PunchColumn.NOTE, hostile));
        PunchState state = read().item(1).orElseThrow();
        assertEquals(hostile.strip(), state.text(PunchColumn.NOTE).strip());
        assertEquals(place, state.place().orElseThrow());
        for (String cell : written().lines().skip(1).findFirst().orElseThrow().split(",")) {
            assertFalse(cell.matches("\"?[=+@-].*"), cell);
        }
    }

    @Test
    void lineBreaksBecomeSpaces() throws IOException {
        add(PunchChange.of(1).with(PunchColumn.NOTE, "two\r\nlines\0more"));
        assertEquals("two lines more", read().item(1).orElseThrow().text(PunchColumn.NOTE));
    }

    @Test
    void withoutTheLockNobodyOpensIt() throws IOException {
        FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow();
        lock.close();
        assertThrows(IllegalStateException.class, () -> PunchLog.open(lock));
    }

    @Test
    void afterAnotherProgramChangedTheFileNothingIsWritten() throws IOException {
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow();
                PunchLog log = PunchLog.open(lock).value().orElseThrow()) {
            log.append(List.of(PunchChange.of(1).with(PunchColumn.NOTE, "one")));
            String changed = written() + "x";
            write(changed);
            NotKept stopped = assertThrows(NotKept.class, () -> log.append(List.of(PunchChange.of(1).with(PunchColumn.NOTE, "two"))));
            assertEquals("punch.csv: It is not recorded: another program changed the file meanwhile. Close it there, and record it again.",
                    stopped.problem().inFull(Locale.ROOT));
            assertEquals(changed, written());
            assertEquals("one", log.states().item(1).orElseThrow().text(PunchColumn.NOTE));
        }
    }

    @Test
    void aChangeThatCannotStandIsTheCallersMistake() {
        assertThrows(IllegalArgumentException.class, () -> PunchChange.of(0));
        assertThrows(IllegalArgumentException.class, () -> PunchChange.of(1).with(PunchColumn.DUE, "soon"));
        assertThrows(IllegalArgumentException.class, () -> PunchChange.of(1).with(PunchColumn.COVE, "C1"));
        assertThrows(IllegalArgumentException.class, () -> PunchChange.of(1).with(PunchColumn.NOTE, "x".repeat(2001)));
    }
}
