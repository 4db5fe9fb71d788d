package covewalk.survey.file.punch;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.Outcome;
import java.util.List;
import java.util.Optional;

/**
 * What {@code punch.csv} holds.
 *
 * @param header empty where the file is missing or has no whole line yet
 * @param changes in the order of the file
 * @param problems what is wrong with it, at its place
 * @param wholeBytes how many bytes its whole rows take; what stands behind them is unfinished
 * @param lines how many lines the whole rows take
 * @param unfinished what stands behind the whole rows, mostly nothing
 * @param crlf whether its header ends with CRLF
 */
record PunchContent(Optional<PunchHeader> header, List<PunchChange> changes, List<Problem> problems, long wholeBytes, int lines,
                    byte[] unfinished, boolean crlf) {

    static PunchContent ofNothing(List<Problem> problems) {
        return new PunchContent(Optional.empty(), List.of(), problems, 0, 0, new byte[0], false);
    }

    /** How the items stand, or everything that is wrong where something is. */
    Outcome<PunchStates> states() {
        return problems.stream().anyMatch(Problem::refused) ? Outcome.refused(problems)
                : Outcome.of(PunchStates.NONE.after(changes), problems);
    }
}
