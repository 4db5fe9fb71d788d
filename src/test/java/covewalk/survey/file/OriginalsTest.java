package covewalk.survey.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import covewalk.survey.file.disk.FolderLock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OriginalsTest {

    @TempDir
    private Path folder;
    @TempDir
    private Path stick;

    private Original keep(String name, byte... bytes) throws IOException {
        Path file = Files.write(stick.resolve(name), bytes);
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            return Originals.in(folder).keep(file, lock);
        }
    }

    private List<String> kept() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("originals"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void keepsEveryByteUnderTheFilesOwnName() throws IOException {
        byte[] bytes = {0, 13, 10, -1, 26, 'x'};
        Original kept = keep("evening walk.csv", bytes);
        assertEquals("evening walk.csv", kept.name());
        assertFalse(kept.wasThere());
        assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("originals/evening walk.csv")));
    }

    /** SHA-256 of "abc", FIPS 180-4 example (from memory). */
    @Test
    void givesTheHashOfTheBytes() throws IOException {
        assertEquals("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                keep("abc.csv", (byte) 'a', (byte) 'b', (byte) 'c').sha256());
    }

    @Test
    void numbersANameThatOtherBytesHave() throws IOException {
        keep("walk.csv", (byte) 1);
        assertEquals("walk-2.csv", keep("walk.csv", (byte) 2).name());
        assertEquals("walk-3.csv", keep("walk.csv", (byte) 3).name());
        keep("noending", (byte) 4);
        assertEquals("noending-2", keep("noending", (byte) 5).name());
        assertArrayEquals(new byte[] {1}, Files.readAllBytes(folder.resolve("originals/walk.csv")));
    }

    @Test
    void tellsThatTheSameBytesAreThereUnderAnyName() throws IOException {
        keep("walk.csv", (byte) 1);
        Original again = keep("copy of walk.csv", (byte) 1);
        assertTrue(again.wasThere());
        assertEquals("walk.csv", again.name());
        assertEquals(List.of("walk.csv"), kept());
        assertEquals(Optional.of("walk.csv"), Originals.in(folder).nameOfSameBytes(stick.resolve("copy of walk.csv")));
    }

    @Test
    void askingWritesNothing() throws IOException {
        Path file = Files.write(stick.resolve("walk.csv"), new byte[] {1});
        assertEquals(Optional.empty(), Originals.in(folder).nameOfSameBytes(file));
        assertFalse(Files.exists(folder.resolve("originals")));
    }

    @Test
    void aFileThatCannotBeReadLeavesNothingBehind() throws IOException {
        try (FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow()) {
            assertThrows(NoSuchFileException.class, () -> Originals.in(folder).keep(stick.resolve("gone.csv"), lock));
        }
        assertFalse(Files.exists(folder.resolve("originals.new")));
    }

    @Test
    void keepingNeedsTheLock() throws IOException {
        FolderLock lock = FolderLock.take(folder, SurveyText.holder()).value().orElseThrow();
        lock.close();
        Path file = Files.write(stick.resolve("walk.csv"), new byte[] {1});
        assertThrows(IllegalStateException.class, () -> Originals.in(folder).keep(file, lock));
    }
}
