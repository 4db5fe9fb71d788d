package covewalk.report;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.DiskWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Why nothing can be written into the folder that a report is to go to. */
public enum OutFolder {
    IS_FILE,
    CANNOT_BE_MADE,
    NOT_WRITABLE;

    /** Makes it where it is missing; empty where all is well. To be done before the survey is sealed: a seal is for a report that was issued. */
    public static Optional<OutFolder> make(Path out) {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            return Optional.of(IS_FILE);
        }
        try {
            Files.createDirectories(out);
        } catch (IOException refused) {
            return Optional.of(CANNOT_BE_MADE);
        }
        return Files.isWritable(out) ? Optional.empty() : Optional.of(NOT_WRITABLE);
    }

    /** What to say where the folder was good, and a file could not be written all the same. */
    public static Problem notWritten(IOException failed) {
        return Problem.refusal("report.not-written", DiskWords.reason(failed));
    }
}
