package covewalk.survey.file.disk;

import covewalk.survey.Problem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Why the disk refused, in a few words that fit behind a colon: without class names and paths. */
public final class DiskWords {

    private static final Map<Class<? extends Exception>, String> KEYS = Map.of(
            AccessDeniedException.class, "disk.denied.reason",
            NoSuchFileException.class, "disk.missing.reason",
            ReadOnlyFileSystemException.class, "disk.read-only.reason",
            NotDirectoryException.class, "disk.file-not-folder.reason",
            FileAlreadyExistsException.class, "disk.file-not-folder.reason", // where a folder was to be made
            DirectoryNotEmptyException.class, "disk.folder-not-file.reason"); // where a file was to be put in place

    private DiskWords() {
    }

    /** As a detail of a problem: the key of words such as {@code access is denied}, or the system's own words. */
    public static String reason(Exception failed) {
        return key(failed).orElseGet(() -> ownWords(failed));
    }

    /** The words themselves, where no problem carries them. */
    public static String reason(Exception failed, Locale language) {
        return key(failed).map(key -> Problem.refusal(key).sentence(language)).orElseGet(() -> ownWords(failed));
    }

    private static Optional<String> key(Exception failed) {
        Optional<String> known = Optional.ofNullable(KEYS.get(failed.getClass()));
        return known.isPresent() || !ownWords(failed).isEmpty() ? known : Optional.of("disk.silent.reason");
    }

    /** Those of the system; empty where it gave none. */
    private static String ownWords(Exception failed) {
        String reason = failed instanceof FileSystemException disk ? disk.getReason() : failed instanceof IOException ? failed.getMessage() : null;
        return reason == null ? "" : reason.strip();
    }
}
