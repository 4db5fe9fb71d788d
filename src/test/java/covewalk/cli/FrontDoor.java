package covewalk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** Runs a command line as a program would be run, with the streams kept in memory. */
final class FrontDoor {

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-10-05T19:30:00Z"), ZoneOffset.UTC);

    private FrontDoor() {
    }

    static Run run(String... args) {
        return runWith("", args);
    }

    static Run runWith(String input, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(new ByteArrayInputStream(input.getBytes(UTF_8)), out, err, false);
        int code = new Commands(terminal, CLOCK).run(args);
        return new Run(code, out.toString(UTF_8), err.toString(UTF_8));
    }

    /** What came of it. */
    record Run(int code, String out, String err) {

        String lastLine() {
            return out.substring(out.lastIndexOf('\n', out.length() - 2) + 1).strip();
        }
    }
}
