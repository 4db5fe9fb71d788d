package covewalk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void countsSecondsOnOneLineAndWipesItAtTheEnd() {
        Progress progress = new Progress("Judging", watched(true));
        progress.second();
        progress.second();
        progress.end();
        assertEquals("\rJudging, 1 s\rJudging, 2 s\r            \r", err.toString(UTF_8));
        assertEquals("", out.toString(UTF_8));
    }

    @Test
    void workDoneWithinASecondSaysNothing() throws Exception {
        assertEquals(7, Progress.during("Judging", watched(true), () -> 7));
        new Progress("Judging", watched(true)).end();
        assertEquals("", err.toString(UTF_8));
    }

    @Test
    void nobodyWatchingMeansNoThreadAndNoWord() throws Exception {
        Thread worker = Progress.during("Judging", watched(false), Thread::currentThread);
        assertEquals(Thread.currentThread(), worker);
        assertEquals("", err.toString(UTF_8));
    }

    private Terminal watched(boolean watched) {
        return new Terminal(InputStream.nullInputStream(), out, err, watched);
    }
}
