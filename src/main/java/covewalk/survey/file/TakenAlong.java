package covewalk.survey.file;

import covewalk.survey.file.disk.DurableFile;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FoundFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes a survey's files along to another folder, byte for byte, as far as they can still be read: from a disk that is full or
 * lets nobody write any more. Links are not followed.
 */
public final class TakenAlong {

    /** One of them without the others says something else: a seal is of the bytes of these very files. */
    private static final List<String> SEALED_TOGETHER = List.of(FileNames.DESCRIPTION, FileNames.LOG, FileNames.SEAL);

    private static final List<String> BESIDE = List.of(FileNames.PUNCH, FileNames.SET_ASIDE, FileNames.ORIGINALS, FileNames.PHOTOS);

    private final Path from;
    private final Path to;
    private final List<Path> sealed = new ArrayList<>();

    /**
     * @param from a survey's folder, which may have gone
     * @param to a folder that holds no survey
     */
    public TakenAlong(Path from, Path to) {
        this.from = from;
        this.to = to;
    }

    /** Description, log and seals: all of those that are there, or none; whether they could be read. */
    public boolean whatIsSealed() throws IOException {
        if (!Files.isRegularFile(from.resolve(FileNames.DESCRIPTION)) || !Files.isRegularFile(from.resolve(FileNames.LOG))) {
            return false;
        }
        try {
            for (String name : SEALED_TOGETHER) {
                if (Files.isRegularFile(from.resolve(name))) {
                    sealed.add(to.resolve(name));
                    DurableFile.copy(from.resolve(name), to.resolve(name));
                }
            }
            return true;
        } catch (IOException unreadable) {
            leaveWhatIsSealed();
            return false;
        }
    }

    /** Takes away again what {@link #whatIsSealed()} brought. */
    public void leaveWhatIsSealed() throws IOException {
        for (Path copy : sealed) {
            Files.deleteIfExists(copy);
        }
        sealed.clear();
    }

    /**
     * The log of what was put right, rows set aside, imported files and pictures.
     *
     * @return names of those that are there and could not be copied whole, and of links, which are not copied
     */
    public List<String> whatLiesBeside() {
        List<String> left = new ArrayList<>();
        for (String name : BESIDE) {
            try {
                FoundFiles found = FoundFiles.under(from.resolve(name));
                found.links().forEach(link -> left.add(from.relativize(link).toString().replace('\\', '/')));
                copyAll(found.files());
            } catch (IOException unreadable) {
                left.add(name);
            }
        }
        return left;
    }

    private void copyAll(List<Path> files) throws IOException {
        for (Path file : files) {
            Path copy = to.resolve(from.relativize(file).toString());
            Files.createDirectories(copy.getParent());
            DurableFile.copy(file, copy);
        }
    }
}
