package covewalk.survey.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;

/** Why the disk refused, for people: without class names and paths. */
public final class DiskWords {

    private DiskWords() {
    }

    /** A few words that fit behind a colon, such as {@code access is denied}. */
    public static String reason(Exception failed) {
        if (failed instanceof AccessDeniedException) {
            return "access is denied";
        }
        if (failed instanceof NoSuchFileException) {
            return "it is not there";
        }
        if (failed instanceof ReadOnlyFileSystemException) {
            return "the disk is read-only";
        }
        String reason = failed instanceof FileSystemException disk ? disk.getReason() : plain(failed);
        return reason == null || reason.isBlank() ? "the disk gave no reason" : reason.strip();
    }

    private static String plain(Exception failed) {
        return failed instanceof IOException ? failed.getMessage() : null;
    }
}
