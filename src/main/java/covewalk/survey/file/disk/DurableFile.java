package covewalk.survey.file.disk;

import static java.nio.file.StandardCopyOption.ATOMIC_MOVE;
import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.TRUNCATE_EXISTING;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;

/** Puts a whole file in place so that a power cut leaves either the old one or the new one, never a part of either. */
public final class DurableFile {

    private DurableFile() {
    }

    /** Writes beside {@code file}, flushes, and renames over it. */
    public static void replace(Path file, byte[] bytes) throws IOException {
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        try {
            try (FileChannel channel = FileChannel.open(beside, WRITE, CREATE, TRUNCATE_EXISTING)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            Files.move(beside, file, ATOMIC_MOVE, REPLACE_EXISTING);
        } catch (IOException failed) {
            Files.deleteIfExists(beside);
            throw failed;
        }
        flushFolder(file.toAbsolutePath().getParent());
    }

    /** Copies a file of any size; when this returns the copy is on disk. An older one of that name is written over. */
    public static void copy(Path file, Path to) throws IOException {
        try (FileChannel channel = FileChannel.open(to, WRITE, CREATE, TRUNCATE_EXISTING);
                OutputStream out = Channels.newOutputStream(channel)) {
            Files.copy(file, out);
            channel.force(true);
        }
        flushFolder(to.toAbsolutePath().getParent());
    }

    /** Makes a new or renamed entry of the folder last. Some systems cannot open a folder; there it is left to them. */
    public static void flushFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, READ)) {
            channel.force(true);
        } catch (IOException cannotBeFlushedHere) {
            return;
        }
    }
}
