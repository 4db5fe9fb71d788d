package covewalk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.junit.jupiter.api.Test;

class OutputTest {

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void whoStopsReadingIsNotToldOfIt() {
        assertEquals(0, helpInto("Broken pipe"));
        assertEquals("", err.toString(UTF_8));
    }

    @Test
    void aTableConvertedForSomebodyWhoStopsReadingEndsQuietly() {
        assertEquals(0, convertInto("Broken pipe"));
        assertEquals("", err.toString(UTF_8));
    }

    @Test
    void anOutputThatCannotBeWrittenIsTold() {
        assertEquals(2, helpInto("No space left on device"));
        assertEquals("The output could not be written to its end: No space left on device. Make room, or send it elsewhere,"
                + " and run the command again.\n", err.toString(UTF_8));
    }

    @Test
    void aTableThatCannotBeWrittenIsTold() {
        assertEquals(2, convertInto("No space left on device"));
        assertEquals("The output could not be written to its end: No space left on device. Make room, or send it elsewhere,"
                + " and run the command again.\n", err.toString(UTF_8));
    }

    private int helpInto(String failure) {
        return new Commands(failing(failure, ""), FrontDoor.CLOCK).run("--help");
    }

    private int convertInto(String failure) {
        return new Commands(failing(failure, "x,y\n" + "0.4585,0.4104\n".repeat(20_000)), FrontDoor.CLOCK).run("convert");
    }

    private Terminal failing(String failure, String input) {
        OutputStream refusing = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(failure);
            }
        };
        return new Terminal(new ByteArrayInputStream(input.getBytes(UTF_8)), refusing, err, false);
    }
}
