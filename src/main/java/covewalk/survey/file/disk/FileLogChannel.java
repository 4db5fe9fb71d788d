package covewalk.survey.file.disk;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.Objects;

/** A file of the disk. */
public final class FileLogChannel implements LogChannel {

    private final Path file;
    private final FileChannel channel;
    private final Object identity;

    private FileLogChannel(Path file, FileChannel channel) throws IOException {
        this.file = file;
        this.channel = channel;
        this.identity = attributes().fileKey();
    }

    public static FileLogChannel open(Path file) throws IOException {
        boolean isNew = Files.notExists(file);
        FileChannel channel = FileChannel.open(file, READ, WRITE, CREATE);
        if (isNew) {
            DurableFile.flushFolder(file.toAbsolutePath().getParent());
        }
        return new FileLogChannel(file, channel);
    }

    /** Fails where another file was put in the place of the one opened, as many editors do when they save. */
    @Override
    public long size() throws IOException {
        BasicFileAttributes now = attributes();
        if (!Objects.equals(now.fileKey(), identity)) {
            throw new IOException("another file took its place");
        }
        return now.size();
    }

    private BasicFileAttributes attributes() throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class);
    }

    @Override
    public byte[] read(long from, int most) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(most);
        long at = from;
        int read = 0;
        while (bytes.hasRemaining() && read >= 0) {
            read = channel.read(bytes, at);
            at += Math.max(read, 0);
        }
        return Arrays.copyOf(bytes.array(), bytes.position());
    }

    @Override
    public void write(long at, byte[] bytes) throws IOException {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
            channel.write(rest, at + rest.position());
        }
    }

    @Override
    public void truncate(long size) throws IOException {
        channel.truncate(size);
    }

    @Override
    public void force() throws IOException {
        channel.force(false);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
