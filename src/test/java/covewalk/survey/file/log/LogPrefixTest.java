package covewalk.survey.file.log;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import covewalk.survey.Reading;
import covewalk.survey.file.SurveyText;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A power cut may leave any number of a log's bytes: whatever it leaves, the whole rows count and the log goes on. */
class LogPrefixTest {

    private static final byte[] LOG = (SurveyText.HEADER + """

            1,C1,0.50,walk,A,1,,,0.4580,0.4100,,,310,2026-10-05T18:31,,
            2,C1,1.0,walk,A,1,,,0.4580,0.4100,,,310,2026-10-05T18:31,,"by the ""door"", Grün"
            3,C1,1.0,walk,A,1,,,,,,,,,1,"read, by mistake"
            """).getBytes(UTF_8);

    @Test
    void everyPrefixReadsAsItsWholeRows() throws IOException {
        List<Reading> all = LogReader.read(new ByteArrayInputStream(LOG), () -> "A").readings();
        for (int length = 0; length <= LOG.length; length++) {
            LogContent content = LogReader.read(new ByteArrayInputStream(LOG, 0, length), () -> "A");
            int rows = lineFeeds(length);
            assertFalse(content.refused(), "after " + length + " bytes");
            assertEquals(all.subList(0, Math.max(0, rows - 1)), content.readings(), "after " + length + " bytes");
            assertEquals(lastLineFeed(length), content.wholeBytes());
            assertEquals(length == content.wholeBytes() ? 0 : 1, content.problems().size());
        }
    }

    @Test
    void everyPrefixCanBeAddedToWithoutLosingAWholeRow(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("readings.csv");
        for (int length = 0; length <= LOG.length; length += 7) {
            Files.write(file, Arrays.copyOf(LOG, length));
            try (ReadingLog log = ReadingLog.open(folder, SurveyText.holder(), "A").value().orElseThrow()) {
                log.append(Readings.reading("9", "2.0", ""));
            }
            byte[] now = Files.readAllBytes(file);
            int kept = lastLineFeed(length);
            assertArrayEquals(Arrays.copyOf(LOG, kept), Arrays.copyOf(now, kept), "after " + length + " bytes");
            List<Reading> readings = LogReader.read(new ByteArrayInputStream(now), () -> "A").readings();
            assertEquals("9", readings.get(readings.size() - 1).id());
            assertEquals(Math.max(1, lineFeeds(length)), readings.size());
        }
    }

    private static int lineFeeds(int length) {
        return (int) new String(LOG, 0, length, ISO_8859_1).chars().filter(c -> c == '\n').count();
    }

    private static int lastLineFeed(int length) {
        int at = length;
        while (at > 0 && LOG[at - 1] != '\n') {
            at--;
        }
        return at;
    }
}
