package covewalk.survey.file.disk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.file.disk.ForgetfulDisk.Next;
import java.io.IOException;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LogEndTest {

    private static final String BEFORE = "header\nfirst\n";

    private final ForgetfulDisk disk = new ForgetfulDisk(BEFORE.getBytes(UTF_8));

    private LogEnd end() throws IOException {
        return new LogEnd(disk, BEFORE.length());
    }

    private static byte[] row(String text) {
        return (text + "\n").getBytes(UTF_8);
    }

    private String kept() {
        return new String(disk.afterPowerCut(), UTF_8);
    }

    @Test
    void whatWasAddedOutlivesAPowerCut() throws IOException {
        LogEnd end = end();
        end.add(row("second"));
        assertEquals(BEFORE + "second\n", kept());
        end.add(row("third"));
        assertEquals(BEFORE + "second\nthird\n", kept());
        assertEquals(1, disk.timesOpened());
    }

    @ParameterizedTest
    @EnumSource(value = Next.class, names = "WRITES", mode = EnumSource.Mode.EXCLUDE)
    void oneFailureIsMadeGoodThroughAFreshChannel(Next failure) throws IOException {
        disk.then(failure);
        LogEnd end = end();
        end.add(row("second"));
        assertEquals(BEFORE + "second\n", kept(), "the disk forgot what a failed flush left behind");
        assertEquals(2, disk.timesOpened());
        end.add(row("third"));
        assertEquals(BEFORE + "second\nthird\n", kept());
    }

    @ParameterizedTest(name = "{0}, then {1}")
    @CsvSource({"FAILS, FAILS", "WRITES_HALF_AND_FAILS, WRITES_HALF_AND_FAILS", "WRITES_HALF_AND_FAILS, FAILS",
        "FLUSH_FAILS, FLUSH_FAILS", "FLUSH_FAILS, FAILS", "FLUSH_FAILS_LATE, FLUSH_FAILS_LATE"})
    void twoFailuresStopTheLogAsItWas(Next first, Next second) throws IOException {
        disk.then(first, second);
        LogEnd end = end();
        NotKept stopped = assertThrows(NotKept.class, () -> end.add(row("second")));
        String reason = second == Next.FAILS || second == Next.WRITES_HALF_AND_FAILS ? "No space left on device" : "Input/output error";
        assertEquals("readings.csv: The reading is not kept: " + reason + ". What was kept before is on disk. Make room or mend"
                + " the disk, open the survey again, and enter the reading again.", stopped.problem().inFull(Locale.ROOT));
        assertEquals(BEFORE, kept());
        assertEquals(BEFORE, new String(disk.seenByReaders(), UTF_8));
        assertThrows(NotKept.class, () -> end.add(row("third")));
        assertEquals(BEFORE, kept(), "a stopped log is not written any more");
    }

    @Test
    void rowsOfAnotherProgramAreNeverWrittenOver() throws IOException {
        LogEnd end = end();
        disk.overwrite((BEFORE + "theirs\n").getBytes(UTF_8));
        NotKept stopped = assertThrows(NotKept.class, () -> end.add(row("second")));
        assertTrue(stopped.problem().inFull(Locale.ROOT).contains("another program changed the log meanwhile"));
        assertEquals(BEFORE + "theirs\n", kept());
    }

    @Test
    void aLogThatLostWhatWasKeptIsNotAddedTo() throws IOException {
        LogEnd end = end();
        disk.overwrite("header\n".getBytes(UTF_8));
        assertThrows(NotKept.class, () -> end.add(row("second")));
        assertEquals("header\n", kept());
    }
}
