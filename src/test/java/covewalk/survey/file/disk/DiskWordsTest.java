package covewalk.survey.file.disk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** By faults as a disk really makes them, where a test can. */
class DiskWordsTest {

    @TempDir
    Path folder;
    private Path file;

    @BeforeEach
    void aFile() throws IOException {
        file = Files.writeString(folder.resolve("photos"), "no folder");
    }

    private static void assertSaid(String words, String german, Exception failed) {
        assertEquals(words, DiskWords.reason(failed, Locale.ROOT));
        assertEquals(german, DiskWords.reason(failed, Locale.GERMAN));
    }

    @Test
    void aFileWhereAFolderShouldBe() {
        assertSaid("a file is where a folder should be", "eine Datei liegt dort, wo ein Ordner sein sollte",
                assertThrows(IOException.class, () -> Files.createDirectories(file)));
        assertSaid("a file is where a folder should be", "eine Datei liegt dort, wo ein Ordner sein sollte",
                assertThrows(IOException.class, () -> Files.newDirectoryStream(file).close()));
    }

    @Test
    void aFolderWhereAFileShouldBe() {
        assertSaid("a folder is where a file should be", "ein Ordner liegt dort, wo eine Datei sein sollte",
                assertThrows(IOException.class, () -> Files.delete(folder)));
    }

    @Test
    void aFileThatIsNotThere() {
        assertSaid("it is not there", "nicht da", assertThrows(IOException.class, () -> Files.size(folder.resolve("gone"))));
    }

    @Test
    void aDiskThatCannotBeWritten() {
        assertSaid("the disk is read-only", "nur lesbar", new ReadOnlyFileSystemException());
    }

    @Test
    void otherwiseTheSystemsOwnWords() {
        assertSaid("No space left on device", "No space left on device", new FileSystemException("/a/b", null, " No space left on device\n"));
        assertSaid("the disk gave no reason", "ohne Angabe eines Grundes", new IOException(" "));
        assertSaid("the disk gave no reason", "ohne Angabe eines Grundes", new IllegalStateException("a fault of the program's own"));
    }
}
