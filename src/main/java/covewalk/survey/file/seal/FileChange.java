package covewalk.survey.file.seal;

import covewalk.survey.file.disk.FileNames;
import java.util.Locale;

/**
 * What became of one file since it was sealed.
 *
 * @param file its name, folders parted by {@code /}
 * @param rows how many rows were added; 0 where none were, or none can be counted
 */
public record FileChange(String file, Kind kind, int rows) {

    /** What can become of a file. */
    public enum Kind {
        /** What was sealed of it is not there any more as it was. */
        CHANGED,
        MISSING,
        /** It was not there when the survey was sealed. */
        ADDED,
        /** What was sealed is there as it was, and rows follow. */
        ROWS_ADDED;

        /** The word in JSON. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public FileChange {
        file = file.replaceAll("[\\p{Cntrl}\\p{Cf}]", " "); // a file's name may steer a terminal
    }

    FileChange(String file, Kind kind) {
        this(file, kind, 0);
    }

    boolean isLog() {
        return file.equals(FileNames.LOG) || file.equals(FileNames.PUNCH);
    }
}
