package covewalk.survey.file.log;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.CsvText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Which cell of a log's rows holds what. Columns go by name, in any order; unknown ones are kept and not read. */
final class LogHeader {

    private static final List<LogColumn> NEEDED = List.of(LogColumn.READING, LogColumn.COVE, LogColumn.POSITION_M);

    private final List<String> names;
    private final int[] cellOf = new int[LogColumn.values().length];

    private LogHeader(List<String> names) {
        this.names = names;
        Arrays.fill(cellOf, -1);
    }

    /** That of a new log. */
    static LogHeader ofNewLog() {
        List<String> codes = Arrays.stream(LogColumn.values()).map(LogColumn::code).toList();
        return of(codes, new ArrayList<>());
    }

    /** Adds to {@code problems} where the rows could not be read by this header. */
    static LogHeader of(List<String> names, List<Problem> problems) {
        LogHeader header = new LogHeader(List.copyOf(names));
        for (int cell = 0; cell < names.size(); cell++) {
            header.take(cell, problems);
        }
        header.checkThatEnoughIsThere(problems);
        return header;
    }

    private void take(int cell, List<Problem> problems) {
        LogColumn.of(names.get(cell)).ifPresent(column -> {
            if (has(column)) {
                problems.add(Problem.refusal("log.header.twice", column.code()).inColumn(column.code()));
            }
            cellOf[column.ordinal()] = cell;
        });
    }

    private void checkThatEnoughIsThere(List<Problem> problems) {
        String missing = NEEDED.stream().filter(column -> !has(column)).map(LogColumn::code).collect(Collectors.joining(", "));
        if (!missing.isEmpty() && names.size() == 1 && names.get(0).indexOf(';') >= 0) {
            problems.add(Problem.refusal("log.header.semicolons"));
        } else if (!missing.isEmpty()) {
            problems.add(Problem.refusal("log.header.missing", missing));
        } else if (!hasColour()) {
            problems.add(Problem.refusal("log.header.no-colour"));
        }
    }

    private boolean hasColour() {
        return has(LogColumn.CCT_K) && has(LogColumn.DUV) || has(LogColumn.X) && has(LogColumn.Y)
                || has(LogColumn.U_PRIME) && has(LogColumn.V_PRIME);
    }

    boolean has(LogColumn column) {
        return cellOf[column.ordinal()] >= 0;
    }

    /** The cell, from 0; -1 where the log has no such column. */
    int cell(LogColumn column) {
        return cellOf[column.ordinal()];
    }

    /** How many cells a row has. */
    int width() {
        return names.size();
    }

    /** The name over a cell as it stands in the file; empty beyond the last. */
    String name(int cell) {
        return cell < names.size() ? names.get(cell) : "";
    }

    String row() {
        return CsvText.row(names);
    }
}
