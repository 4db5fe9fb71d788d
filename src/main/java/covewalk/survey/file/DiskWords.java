package covewalk.survey.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.ReadOnlyFileSystemException;

/** Why the disk refused, as a detail of a problem: without class names and paths. */
public final class DiskWords {

    private DiskWords() {
    }

    /** The key of a few words that fit behind a colon, such as {@code access is denied}, or the system's own words. */
    public static String reason(Exception failed) {
        if (failed instanceof AccessDeniedException) {
            return "disk.denied.reason";
        }
        if (failed instanceof NoSuchFileException) {
            return "disk.missing.reason";
        }
        if (failed instanceof ReadOnlyFileSystemException) {
            return "disk.read-only.reason";
        }
        String reason = failed instanceof FileSystemException disk ? disk.getReason() : plain(failed);
        return reason == null || reason.isBlank() ? "disk.silent.reason" : reason.strip();
    }

    private static String plain(Exception failed) {
        return failed instanceof IOException ? failed.getMessage() : null;
    }
}
