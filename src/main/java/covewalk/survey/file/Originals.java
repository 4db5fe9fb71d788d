package covewalk.survey.file;

import static java.nio.file.StandardCopyOption.ATOMIC_MOVE;

import covewalk.survey.file.disk.DurableFile;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Sha256;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Keeps imported files, and descriptions that another took the place of, byte for byte in {@code originals/}; none is ever written over. */
public final class Originals {

    private final Path folder;
    private final Path kept;

    private Originals(Path folder) {
        this.folder = folder;
        this.kept = folder.resolve(FileNames.ORIGINALS);
    }

    public static Originals in(Path surveyFolder) {
        return new Originals(surveyFolder);
    }

    /** The name under which the same bytes are kept already, whatever the file is called now; writes nothing. */
    public Optional<String> nameOfSameBytes(Path file) throws IOException {
        if (!Files.isDirectory(kept)) {
            return Optional.empty();
        }
        String wanted = Sha256.of(file);
        for (Path candidate : files()) {
            if (Files.size(candidate) == Files.size(file) && Sha256.of(candidate).equals(wanted)) {
                return Optional.of(candidate.getFileName().toString());
            }
        }
        return Optional.empty();
    }

    /**
     * Keeps the file under its own name, with a number after it where other bytes have that name. When this returns it
     * is on disk. The lock shows that no other program writes meanwhile.
     */
    public Original keep(Path file, FolderLock lock) throws IOException {
        return keep(incoming -> DurableFile.copy(file, incoming), file.getFileName().toString(), lock);
    }

    /** The same for bytes that lie in no file yet. */
    Original keep(byte[] bytes, String ownName, FolderLock lock) throws IOException {
        return keep(incoming -> DurableFile.replace(incoming, bytes), ownName, lock);
    }

    /** What brings the bytes to a file. */
    @FunctionalInterface
    private interface Bringing {
        void to(Path incoming) throws IOException;
    }

    private Original keep(Bringing bringing, String ownName, FolderLock lock) throws IOException {
        if (!lock.isHeld()) {
            throw new IllegalStateException("the folder's lock has been given back");
        }
        Path incoming = folder.resolve("originals.new");
        try {
            bringing.to(incoming);
            Optional<String> already = nameOfSameBytes(incoming);
            String name = already.isPresent() ? already.get() : moveIn(incoming, ownName);
            return new Original(name, Sha256.of(kept.resolve(name)), already.isPresent());
        } finally {
            Files.deleteIfExists(incoming);
        }
    }

    private String moveIn(Path incoming, String ownName) throws IOException {
        Files.createDirectories(kept);
        String name = ownName;
        for (int i = 2; Files.exists(kept.resolve(name)); i++) {
            name = numbered(ownName, i);
        }
        Files.move(incoming, kept.resolve(name), ATOMIC_MOVE);
        DurableFile.flushFolder(kept);
        DurableFile.flushFolder(folder);
        return name;
    }

    private static String numbered(String name, int number) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) + "-" + number + name.substring(dot) : name + "-" + number;
    }

    private List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(kept, Files::isRegularFile)) {
            entries.forEach(files::add);
        }
        files.sort(null);
        return files;
    }
}
