package covewalk.survey.file.convert;

import java.util.Arrays;

/**
 * Where the cells of one row lie in its bytes. A cell that begins with a quote runs to the next lone quote, over line
 * ends too, but over no more than {@value #MOST_LINES} of them; a quote left open spoils its own line and no other.
 */
final class RowCells {

    /** The answer when the bytes end before the row does. */
    static final int MORE = -1;
    private static final int OPEN = -2;
    private static final int MOST_LINES = 20;

    private final byte separator;
    private byte[] bytes = new byte[0];
    private int[] starts = new int[32];
    private int[] ends = new int[32];
    private int count;
    private boolean spoiled;
    private int end;

    RowCells(char separator) {
        this.separator = (byte) separator;
    }

    /**
     * Finds the row's cells.
     *
     * @param filled where the bytes end
     * @param last whether no more bytes will come
     * @return the place of the line end that closes the row, or {@link #MORE}
     */
    int split(byte[] from, int start, int filled, boolean last) {
        bytes = from;
        count = 0;
        spoiled = false;
        end = cells(start, filled, last);
        if (end == OPEN) {
            count = 0;
            spoiled = true;
            end = line(start, filled, last);
        }
        return end;
    }

    private int cells(int start, int filled, boolean last) {
        int at = start;
        while (true) {
            int from = at;
            boolean quoted = at < filled && bytes[at] == '"';
            at = quoted ? afterQuote(at + 1, filled, last) : plain(at, filled);
            if (at < 0) {
                return at;
            }
            if (at == filled && !last) {
                return MORE;
            }
            boolean closed = at == filled || bytes[at] == separator || bytes[at] == '\n' || bytes[at] == '\r';
            if (!closed) {
                return OPEN;
            }
            keep(from, at);
            if (at == filled || bytes[at] != separator) {
                return at;
            }
            at++;
        }
    }

    private int plain(int from, int filled) {
        int at = from;
        while (at < filled && bytes[at] != separator && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        return at;
    }

    private int afterQuote(int from, int filled, boolean last) {
        int lines = 0;
        for (int at = from; at < filled; at++) {
            if (bytes[at] == '"') {
                if (at + 1 == filled || bytes[at + 1] != '"') {
                    return at + 1;
                }
                at++;
            } else if (bytes[at] == '\n' && ++lines == MOST_LINES) {
                return OPEN;
            }
        }
        return last ? OPEN : MORE;
    }

    private int line(int start, int filled, boolean last) {
        int at = start;
        while (at < filled && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        return at == filled && !last ? MORE : at;
    }

    private void keep(int from, int to) {
        if (count == starts.length) {
            starts = Arrays.copyOf(starts, 2 * count);
            ends = Arrays.copyOf(ends, 2 * count);
        }
        starts[count] = from;
        ends[count++] = to;
    }

    int count() {
        return count;
    }

    /** Whether a quote was left open, so that the cells cannot be told apart. */
    boolean spoiled() {
        return spoiled;
    }

    byte[] bytes() {
        return bytes;
    }

    /** The cell as it was typed, quotes included. */
    int start(int cell) {
        return starts[cell];
    }

    int end(int cell) {
        return ends[cell];
    }

    /** Whether the row has no such cell, or nothing in it. */
    boolean isBlank(int cell) {
        return cell >= count || innerStart(cell) >= innerEnd(cell);
    }

    /** Where the cell's text starts, behind quotes and blanks. */
    int innerStart(int cell) {
        int at = starts[cell];
        while (at < ends[cell] && (bytes[at] == ' ' || bytes[at] == '"' || bytes[at] == '\t')) {
            at++;
        }
        return at;
    }

    int innerEnd(int cell) {
        int at = ends[cell];
        while (at > starts[cell] && (bytes[at - 1] == ' ' || bytes[at - 1] == '"' || bytes[at - 1] == '\t')) {
            at--;
        }
        return at;
    }

    /** The cell as a number, NaN where it is none. */
    double number(int cell) {
        return cell < 0 || isBlank(cell) ? Double.NaN : TypedDigits.read(bytes, innerStart(cell), innerEnd(cell));
    }

    boolean isBlank() {
        for (int cell = 0; cell < count; cell++) {
            if (!isBlank(cell)) {
                return false;
            }
        }
        return !spoiled;
    }
}
