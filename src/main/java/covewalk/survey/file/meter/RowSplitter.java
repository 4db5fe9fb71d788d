package covewalk.survey.file.meter;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits a text into rows and cells. A cell that begins with a quote runs to the next lone quote, over line ends too,
 * but never over more than {@value #MOST_LINES} of them: a quote left open spoils its own line and no other. Rows
 * without ink (only blanks, separators and quotes) are no rows. {@link RowCount} counts the same rows from the bytes,
 * in its own way; the two share nothing on purpose.
 */
final class RowSplitter {

    /** A table is narrower than this; a row that is not is no table's row, and would only eat memory. */
    private static final int MOST_CELLS = 1000;
    private static final int MOST_LINES = 20;

    private final String text;
    private final char separator;
    private int at;
    private int line = 1;
    private List<String> cells;

    RowSplitter(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    List<MeterRow> all() {
        return first(Integer.MAX_VALUE);
    }

    /** The first so many rows. */
    List<MeterRow> first(int most) {
        List<MeterRow> rows = new ArrayList<>();
        while (at < text.length() && rows.size() < most) {
            MeterRow row = next();
            if (hasInk(row.raw())) {
                rows.add(row);
            }
        }
        return rows;
    }

    private MeterRow next() {
        int start = at;
        int startLine = line;
        cells = new ArrayList<>();
        String fault = "";
        if (!splitRow()) {
            fault = "import.open-quote";
            at = lineEnd(start);
            cells = List.of();
        } else if (cells.size() >= MOST_CELLS) {
            fault = "import.too-wide";
            cells = List.of();
        }
        String raw = text.substring(start, at);
        stepOverLineEnd();
        line = startLine + lineEnds(raw) + 1;
        return new MeterRow(startLine, raw, cells, fault);
    }

    /** Moves to the row's end; false where a quoted cell has none. */
    private boolean splitRow() {
        while (true) {
            boolean quoted = at < text.length() && text.charAt(at) == '"';
            if (quoted) {
                if (!quotedCell()) {
                    return false;
                }
            } else {
                plainCell();
            }
            if (at >= text.length() || isLineEnd(text.charAt(at))) {
                return true;
            }
            at++; // over the separator
        }
    }

    private void plainCell() {
        int from = at;
        while (at < text.length() && text.charAt(at) != separator && !isLineEnd(text.charAt(at))) {
            at++;
        }
        keep(from, at, false);
    }

    private boolean quotedCell() {
        int from = at + 1;
        int close = closingQuote(from);
        if (close < 0) {
            return false;
        }
        at = close + 1;
        boolean ends = at >= text.length() || text.charAt(at) == separator || isLineEnd(text.charAt(at));
        if (ends) {
            keep(from, close, true);
        }
        return ends;
    }

    private int closingQuote(int from) {
        int lines = 0;
        for (int i = from; i < text.length() && lines < MOST_LINES; i++) {
            char c = text.charAt(i);
            if (c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n')) {
                lines++;
            } else if (c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                i++;
            } else if (c == '"') {
                return i;
            }
        }
        return -1;
    }

    private void keep(int from, int to, boolean quoted) {
        if (cells.size() < MOST_CELLS) {
            String cell = text.substring(from, to).strip();
            cells.add(quoted ? cell.replace("\"\"", "\"") : cell);
        }
    }

    private int lineEnd(int from) {
        int end = from;
        while (end < text.length() && !isLineEnd(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private void stepOverLineEnd() {
        if (at < text.length()) {
            boolean both = text.charAt(at) == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
            at += both ? 2 : 1;
        }
    }

    private static int lineEnds(String raw) {
        return raw.indexOf('\n') < 0 && raw.indexOf('\r') < 0 ? 0 : raw.split("\r\n|\r|\n", -1).length - 1;
    }

    private static boolean isLineEnd(char c) {
        return c == '\n' || c == '\r';
    }

    private static boolean hasInk(String raw) {
        return raw.chars().anyMatch(c -> " \t\r\n,;\"".indexOf(c) < 0);
    }
}
