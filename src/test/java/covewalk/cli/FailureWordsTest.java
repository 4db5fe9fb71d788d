package covewalk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FailureWordsTest {

    private static final String AGAIN = ". Put that right and run the command again.\n";

    static Stream<Arguments> failures() {
        return Stream.of(
                Arguments.of(new NoSuchFileException("/a/b/readings.csv"), "readings.csv: it is not there" + AGAIN),
                Arguments.of(new AccessDeniedException("/a/b/readings.csv"), "readings.csv: access is denied" + AGAIN),
                Arguments.of(new NotDirectoryException("/a/b/photos"), "photos: a file is where a folder should be" + AGAIN),
                Arguments.of(new FileAlreadyExistsException("/a/b/originals"), "originals: a file is where a folder should be" + AGAIN),
                Arguments.of(new FileSystemException("/a/b/punch-list.html", null, "No space left on device"),
                        "punch-list.html: No space left on device" + AGAIN),
                Arguments.of(new FileSystemException("/a/b/survey.json"), "survey.json: the disk gave no reason" + AGAIN),
                Arguments.of(new IOException("Input/output error"), "The disk refused: Input/output error" + AGAIN),
                Arguments.of(new IOException((String) null), "The disk refused: the disk gave no reason" + AGAIN),
                Arguments.of(new UncheckedIOException(new NoSuchFileException("x")), "x: it is not there" + AGAIN),
                Arguments.of(new IllegalStateException("7 of 6"), "Covewalk stopped because of a fault of its own, not of yours"
                        + " (7 of 6). What was kept before stays kept. Please report it with what you typed and, if you may, the survey.\n"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("failures")
    void noFailureShowsAClassATraceOrAFolder(Exception failure, String words) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(InputStream.nullInputStream(), OutputStream.nullOutputStream(), err, false);
        assertEquals(2, new FailureWords(terminal).handleExecutionException(failure, null, null));
        assertEquals(words, err.toString(UTF_8));
    }
}
