package covewalk.survey.file.seal;

import java.util.List;
import java.util.Locale;

/**
 * A survey compared with one of its seals.
 *
 * @param code of the seal
 * @param changes what became of its files; none where all is as it was sealed
 */
public record Verified(String code, List<FileChange> changes) {

    /** What came of it. */
    public enum Result {
        UNCHANGED,
        /** All that was sealed is as it was; readings, records or files were added. */
        ADDED,
        CHANGED;

        /** The word in JSON. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public Verified {
        changes = List.copyOf(changes);
    }

    public Result result() {
        if (changes.isEmpty()) {
            return Result.UNCHANGED;
        }
        return changes.stream().allMatch(Verified::isAddition) ? Result.ADDED : Result.CHANGED;
    }

    /** Whether a log is not as it was, which is only ever added to: that is never a later correction. */
    public boolean logChanged() {
        return changes.stream().anyMatch(change -> change.isLog() && !isAddition(change));
    }

    private static boolean isAddition(FileChange change) {
        return change.kind() == FileChange.Kind.ADDED || change.kind() == FileChange.Kind.ROWS_ADDED;
    }
}
