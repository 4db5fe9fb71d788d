package covewalk.survey.file.log;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import java.util.List;
import java.util.Optional;

/**
 * What a reading log holds.
 *
 * @param header its header; empty where the file is missing or has no whole line yet
 * @param readings in the order of the file
 * @param problems what is wrong with it, at its place
 * @param wholeBytes how many bytes its whole rows take; what stands behind them is unfinished
 * @param lines how many lines the whole rows take
 * @param unfinished what stands behind the whole rows, mostly nothing
 * @param crlf whether its header ends with CRLF
 */
public record LogContent(Optional<LogHeader> header, List<Reading> readings, List<Problem> problems, long wholeBytes,
                  int lines, byte[] unfinished, boolean crlf) {

    public LogContent {
        readings = List.copyOf(readings); // once here: whoever takes copies of it later gets this one
        problems = List.copyOf(problems);
    }

    public static LogContent ofNothing() {
        return new LogContent(Optional.empty(), List.of(), List.of(), 0, 0, new byte[0], false);
    }

    public LogContent with(Problem problem) {
        return new LogContent(header, readings, List.of(problem), wholeBytes, lines, unfinished, crlf);
    }

    boolean refused() {
        return problems.stream().anyMatch(Problem::refused);
    }
}
