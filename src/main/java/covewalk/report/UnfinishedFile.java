package covewalk.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file written beside its place: it gets there as a whole, or goes away and leaves what was there. */
final class UnfinishedFile implements AutoCloseable {

    private final Path place;
    private final Path half;

    private UnfinishedFile(Path place) {
        this.place = place;
        this.half = place.resolveSibling("." + place.getFileName() + ".part");
    }

    /** What is to stand in it. */
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Nothing stays behind where the content cannot be written. */
    static UnfinishedFile of(Path place, Content content) throws IOException {
        UnfinishedFile file = new UnfinishedFile(place);
        boolean written = false;
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file.half))) {
            content.writeTo(out);
            written = true;
        } finally {
            if (!written) {
                file.close();
            }
        }
        return file;
    }

    /** Puts it in its place. */
    Path finish() throws IOException {
        return Files.move(half, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    @Override
    public void close() throws IOException {
        Files.deleteIfExists(half);
    }
}
