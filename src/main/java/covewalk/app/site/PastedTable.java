package covewalk.app.site;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as it comes out of a spreadsheet by copy and paste, or out of a file: cells parted by tabs, semicolons or commas,
 * perhaps in quotation marks.
 *
 * @param rows without those that are empty
 */
record PastedTable(List<Row> rows) {

    /** More is no table of labels. */
    private static final int LONGEST = 5_000_000;

    /**
     * @param line in what was pasted, from 1
     * @param text as it was pasted
     */
    record Row(int line, String text, List<String> cells) {

        Row {
            cells = List.copyOf(cells);
        }

        /** The cell of a column from 0; empty where the row is shorter. */
        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }

        boolean isEmpty() {
            return cells.stream().allMatch(String::isEmpty);
        }
    }

    PastedTable {
        rows = List.copyOf(rows);
    }

    static PastedTable of(String pasted) {
        String text = pasted.length() > LONGEST ? pasted.substring(0, LONGEST) : pasted;
        char separator = separator(text);
        List<Row> rows = new ArrayList<>();
        int at = 0;
        int line = 1;
        while (at < text.length()) {
            int end = endOfRow(text, at);
            Row row = new Row(line, text.substring(at, end), cells(text.substring(at, end), separator));
            if (!row.isEmpty()) {
                rows.add(row);
            }
            line += (int) text.substring(at, end).chars().filter(c -> c == '\n').count() + 1;
            at = end + (text.startsWith("\r\n", end) ? 2 : 1);
        }
        return new PastedTable(rows);
    }

    /** A tab wherever there is one, as spreadsheets copy; else a semicolon, since commas are in numbers too. */
    private static char separator(String text) {
        return text.indexOf('\t') >= 0 ? '\t' : text.indexOf(';') >= 0 ? ';' : ',';
    }

    /** A line's end, those in quotation marks left out; a mark that nothing closes is just a mark. */
    private static int endOfRow(String text, int from) {
        boolean quoted = false;
        int first = -1;
        for (int i = from; i < text.length(); i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            if (c == '\n' || c == '\r') {
                if (!quoted) {
                    return i;
                }
                first = first < 0 ? i : first;
            }
        }
        return first < 0 ? text.length() : first;
    }

    private static List<String> cells(String row, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < row.length(); i++) {
            char c = row.charAt(i);
            if (c == '"' && (quoted || cell.toString().isBlank())) {
                boolean doubled = quoted && i + 1 < row.length() && row.charAt(i + 1) == '"';
                cell.append(doubled ? "\"" : "");
                i += doubled ? 1 : 0;
                quoted = doubled == quoted;
            } else if (c == separator && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    int columns() {
        return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    }
}
