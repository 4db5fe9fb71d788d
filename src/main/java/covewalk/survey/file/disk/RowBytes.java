package covewalk.survey.file.disk;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/**
 * Finds the rows of comma-separated text (RFC 4180, line ends LF or CRLF) as ranges of bytes, and what is left
 * unfinished behind the last of them. {@link Cells} splits a row. A library for such text would make sixteen strings of
 * every row, and would not say where in the file the last whole row ends: there a power cut is told from a row.
 */
public final class RowBytes {

    /** Far beyond any row that somebody typed, 1 MiB. */
    public static final int LONGEST_ROW = 1 << 20;

    private static final int FIRST_BUFFER = 1 << 16;

    private final InputStream in;
    private byte[] buffer = new byte[FIRST_BUFFER];
    private int filled;
    private int start;
    private int end;
    private int next;
    private long startOffset;
    private int line = 1;
    private int nextLine = 1;
    private boolean inQuotes;

    public RowBytes(InputStream in) {
        this.in = in;
    }

    /** Moves on to the next whole row; false where none is left or none can be told. */
    public boolean next() throws IOException {
        startOffset += next - start;
        start = next;
        line = nextLine;
        inQuotes = false;
        int closedAt = -1; // as an offset from the row's start, which moves within the buffer
        for (int i = 0; i < LONGEST_ROW; i++) {
            if (start + i == filled && !fill()) {
                return false;
            }
            byte b = buffer[start + i];
            if (b == '\n') {
                nextLine++;
                if (!inQuotes) {
                    return rowEndsAt(start + i);
                }
            } else if (b == '"') {
                boolean opens = i == 0 || buffer[start + i - 1] == ',' || closedAt == i - 1;
                closedAt = inQuotes ? i : closedAt;
                inQuotes = !inQuotes && opens;
            }
        }
        return false;
    }

    private boolean rowEndsAt(int lineFeed) {
        next = lineFeed + 1;
        end = lineFeed > start && buffer[lineFeed - 1] == '\r' ? lineFeed - 1 : lineFeed;
        return true;
    }

    private boolean fill() throws IOException {
        if (start > 0) {
            System.arraycopy(buffer, start, buffer, 0, filled - start);
            filled -= start;
            next -= start;
            start = 0;
        }
        if (filled == buffer.length) {
            buffer = Arrays.copyOf(buffer, 2 * buffer.length);
        }
        int read = in.read(buffer, filled, buffer.length - filled);
        filled += Math.max(read, 0);
        return read > 0;
    }

    public byte[] buffer() {
        return buffer;
    }

    /** Where in the buffer the row begins. */
    public int start() {
        return start;
    }

    /** Where in the buffer it ends, before its line end. */
    public int end() {
        return end;
    }

    public boolean endsWithCrLf() {
        return next - end == 2;
    }

    /** The row's first line in the file, from 1; after the last row, that of what is left unfinished. */
    public int line() {
        return line;
    }

    /** How many bytes lie before the row; after the last row, how many bytes the whole rows take. */
    public long offset() {
        return startOffset;
    }

    /** After the last row: what is left unfinished, mostly nothing. */
    public byte[] rest() {
        return Arrays.copyOfRange(buffer, start, filled);
    }

    /**
     * After the last row: what is wrong with the rest, other than being unfinished; null where nothing is. Rows of ours
     * lie on one line each, so a rest that reaches over several was not left by a power cut, and nobody may cut it off.
     */
    public Damage restDamage() {
        if (filled - start >= LONGEST_ROW) {
            return inQuotes ? Damage.OPEN_QUOTE : Damage.TOO_LONG;
        }
        if (inQuotes && nextLine > line) {
            return Damage.OPEN_QUOTE;
        }
        return holdsLoneReturn() ? Damage.CONTROL : null;
    }

    /** Carriage returns without line feeds are how some old programs end their lines. */
    private boolean holdsLoneReturn() {
        for (int i = start; i < filled - 1; i++) {
            if (buffer[i] == '\r') {
                return true;
            }
        }
        return false;
    }
}
