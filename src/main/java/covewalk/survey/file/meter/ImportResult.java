package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import java.util.List;

/**
 * What came of an import.
 *
 * @param rows how many rows of readings the file has
 * @param kept how many of them were added to the log
 * @param alreadyThere how many stood in the log before, from the same file or an earlier export of the same memory, or as the same reading at the same time
 * @param setAside the rows that could not be read, each with its line, column and reason
 * @param warnings what was taken and looks wrong, or what the user should know
 * @param questions columns that were not recognised: nothing of them went to the log
 * @param refusals why the file was refused; then nothing at all was written, except where the count of rows disagrees
 */
public record ImportResult(int rows, int kept, int alreadyThere, List<Problem> setAside, List<Problem> warnings,
                           List<Problem> questions, List<Problem> refusals) {

    public ImportResult {
        setAside = List.copyOf(setAside);
        warnings = List.copyOf(warnings);
        questions = List.copyOf(questions);
        refusals = List.copyOf(refusals);
    }

    static ImportResult refused(List<Problem> why) {
        return new ImportResult(0, 0, 0, List.of(), List.of(), List.of(), why);
    }

    /** Whether something stood against the file as a whole. */
    public boolean refused() {
        return !refusals.isEmpty();
    }

    /** Whether every row of the file is in the log now. */
    public boolean tookEverything() {
        return !refused() && setAside.isEmpty();
    }
}
