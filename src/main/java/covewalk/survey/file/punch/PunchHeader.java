package covewalk.survey.file.punch;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.CsvText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which cell of a row of {@code punch.csv} holds what. Columns go by name, in any order; unknown ones are kept. */
final class PunchHeader {

    private final List<String> names;
    private final Map<PunchColumn, Integer> cells = new EnumMap<>(PunchColumn.class);

    private PunchHeader(List<String> names) {
        this.names = names;
    }

    /** That of a new log. */
    static PunchHeader ofNewLog() {
        return of(Arrays.stream(PunchColumn.values()).map(PunchColumn::code).toList(), new ArrayList<>());
    }

    /** Adds to {@code problems} where the rows could not be read by this header. */
    static PunchHeader of(List<String> names, List<Problem> problems) {
        PunchHeader header = new PunchHeader(List.copyOf(names));
        for (int cell = 0; cell < names.size(); cell++) {
            header.take(cell, problems);
        }
        if (!header.has(PunchColumn.ITEM)) {
            boolean semicolons = names.size() == 1 && names.get(0).indexOf(';') >= 0;
            problems.add(semicolons ? Problem.refusal("log.header.semicolons")
                    : Problem.refusal("log.header.missing", PunchColumn.ITEM.code()));
        }
        return header;
    }

    private void take(int cell, List<Problem> problems) {
        Optional<PunchColumn> column = PunchColumn.of(names.get(cell));
        if (column.isPresent() && cells.putIfAbsent(column.get(), cell) != null) {
            problems.add(Problem.refusal("log.header.twice", column.get().code()).inColumn(column.get().code()));
        }
    }

    boolean has(PunchColumn column) {
        return cells.containsKey(column);
    }

    /** The cell, from 0; of a column that is there. */
    int cell(PunchColumn column) {
        return cells.get(column);
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
