package covewalk.survey.file.log;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.Reading;
import covewalk.survey.Seen;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.SurveyText;
import covewalk.survey.file.disk.NotKept;
import covewalk.survey.file.disk.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingLogTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void describe() throws IOException {
        SurveyText.folder(folder, SurveyText.SOUND, null);
    }

    private ReadingLog open() throws IOException {
        return ReadingLog.open(folder, SurveyText.holder(), "A").value().orElseThrow();
    }

    private String log() throws IOException {
        return Files.readString(folder.resolve("readings.csv"), UTF_8);
    }

    private void write(String log) throws IOException {
        Files.writeString(folder.resolve("readings.csv"), log, UTF_8);
    }

    private List<Reading> read() throws IOException {
        ReadSurvey read = SurveyFolder.at(folder).read();
        assertEquals("", Seen.all(read.problems()));
        return read.log();
    }

    @Test
    void whatIsAppendedIsReadBackWithTheDigitsAsTyped() throws IOException {
        List<Reading> kept;
        try (ReadingLog log = open()) {
            kept = log.append(Readings.reading(log.nextId(), "0.50", "by the \"door\", left"),
                    Readings.reading(log.nextId(), "1.0", "Grünes Licht"), Readings.withdrawal(log.nextId(), "1"));
        }
        assertEquals(kept, read());
        assertEquals(SurveyText.HEADER + """

                1,C1,0.50,walk,A,1,,,0.4580,0.4100,,,310,2026-10-05T18:31,,"by the ""door"", left"
                2,C1,1.0,walk,A,1,,,0.4580,0.4100,,,310,2026-10-05T18:31,,Grünes Licht
                3,C1,1.0,walk,A,1,,,,,,,,,1,read by mistake
                """, log());
    }

    @Test
    void aNoteStaysOnOneLine() throws IOException {
        try (ReadingLog log = open()) {
            log.append(Readings.reading("1", "0.5", "two\r\nlines\tand\0more"));
        }
        assertEquals("two lines and more", read().get(0).note());
    }

    @Test
    void rowsFollowTheHeaderThatIsThereAndLeaveUnknownColumnsEmpty() throws IOException {
        write("note,weather,y,x,position_m,cove,reading,lux,taken_at\r\nfirst,rain,0.4100,0.4580,0.5,C1,7,,\r\n");
        try (ReadingLog log = open()) {
            assertEquals("8", log.nextId());
            assertEquals(3, log.append(Readings.reading("8", "1.50", "second")).get(0).line());
        }
        assertTrue(log().endsWith("first,rain,0.4100,0.4580,0.5,C1,7,,\r\nsecond,,0.4100,0.4580,1.50,C1,8,310,2026-10-05T18:31\r\n"), log());
        assertEquals(2, read().size());
    }

    @Test
    void aReadingThatTheHeaderHasNoColumnForIsNotKept() throws IOException {
        write("reading,cove,position_m,x,y,lux,taken_at\n");
        try (ReadingLog log = open()) {
            log.append(Readings.reading("1", "0.5", ""));
            NotKept refused = assertThrows(NotKept.class, () -> log.append(Readings.reading("2", "0.5", "a note")));
            assertEquals("readings.csv:1: note: The log has no column note, which this reading needs. Add it to the header line"
                    + " and to the rows, then keep the reading again; nothing was written.", refused.problem().inFull(Locale.ROOT));
            log.append(Readings.reading("3", "0.5", ""));
        }
        assertEquals(2, read().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", " ", ""})
    void anIdIsNotUsedTwice(String id) throws IOException {
        try (ReadingLog log = open()) {
            log.append(Readings.reading("1", "0.5", ""));
            assertThrows(IllegalArgumentException.class, () -> log.append(Readings.reading(id, "0.5", "")));
            assertThrows(IllegalArgumentException.class,
                    () -> log.append(Readings.reading("5", "0.5", ""), Readings.reading("5", "0.5", "")));
        }
        assertEquals(1, read().size());
    }

    @Test
    void nextIdsAreNumbersThatNobodyHas() throws IOException {
        write(SurveyText.HEADER + "\nr9,C1,1,,,,2700,0.0001,,,,,,,,\n41,C1,1,,,,2700,0.0001,,,,,,,,\n");
        try (ReadingLog log = open()) {
            assertEquals(List.of("42", "43"), List.of(log.nextId(), log.nextId()));
        }
    }

    @Test
    void aDamagedLogIsNotAddedToAndTheLockIsGivenBack() throws IOException {
        write(SurveyText.HEADER + "\n1,C1\n");
        assertEquals("R readings.csv:2: This row has 2 cells and the header has 16. Compare the commas with a row above.",
                Seen.all(ReadingLog.open(folder, SurveyText.holder(), "A").problems()));
        write(SurveyText.HEADER + "\n");
        open().close();
    }

    @Test
    void aTornLineIsSetAsideInWordsAndNothingElseIsTouched() throws IOException {
        String whole = SurveyText.HEADER + "\n1,C1,0.5,walk,A,1,2702,0.0004,,,,,310,,,\n";
        write(whole + "2,C1,0.7,walk,A,1,2\0\0");
        Outcome<ReadingLog> opened = ReadingLog.open(folder, SurveyText.holder(), "A");
        assertEquals("W readings.csv:3: The last line was unfinished, as after a power cut. It was taken out and is kept in"
                + " set-aside.csv; take that reading again.", Seen.all(opened.problems()));
        opened.value().orElseThrow().close();
        assertEquals(whole, log());
        assertEquals("source,line,column,reason,row\n"
                + "readings.csv,3,,\"unfinished last line, as after a power cut\",\"2,C1,0.7,walk,A,1,2\\x00\\x00\"\n",
                Files.readString(folder.resolve("set-aside.csv")));
    }

    @Test
    void afterAnotherProgramChangedTheFileNothingIsWritten() throws IOException {
        try (ReadingLog log = open()) {
            log.append(Readings.reading("1", "0.5", ""));
            String changed = log() + "x";
            write(changed);
            NotKept stopped = assertThrows(NotKept.class, () -> log.append(Readings.reading("2", "0.5", "")));
            assertEquals("readings.csv: The reading is not kept: another program changed the log meanwhile. Close it there, open"
                    + " the survey again, and enter the reading again.", stopped.problem().inFull(Locale.ROOT));
            assertEquals(changed, log());
            assertThrows(NotKept.class, () -> log.append(Readings.reading("3", "0.5", "")));
        }
    }

    @Test
    void afterAnEditorPutTheSameFileInItsPlaceReadingsGoThere() throws IOException {
        try (ReadingLog log = open()) {
            log.append(Readings.reading("1", "0.5", ""));
            Files.writeString(folder.resolve("copy"), log());
            Files.move(folder.resolve("copy"), folder.resolve("readings.csv"), StandardCopyOption.REPLACE_EXISTING);
            log.append(Readings.reading("2", "0.5", ""));
        }
        assertEquals(2, read().size());
    }
}
