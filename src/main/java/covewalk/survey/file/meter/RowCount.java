package covewalk.survey.file.meter;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * Counts the rows of a table straight from its bytes, so that an import can be checked against something that shares
 * no code with it. Knows quotes, the three line ends and the two widths of a character, and nothing of what rows mean.
 */
final class RowCount {

    private static final int END = -1;
    private static final int MOST_LINES = 20;

    private final byte[] bytes;
    private final int width;
    private final boolean lowFirst;
    private final char separator;

    private RowCount(byte[] bytes, Charset charset, char separator) {
        this.bytes = bytes;
        this.width = charset.name().startsWith("UTF-16") ? 2 : 1;
        this.lowFirst = charset.equals(StandardCharsets.UTF_16LE);
        this.separator = separator;
    }

    /** How many rows hold more than blanks, commas, semicolons and quotes. */
    static int of(byte[] bytes, Charset charset, char separator) {
        return new RowCount(bytes, charset, separator).count();
    }

    private int count() {
        int rows = 0;
        int from = startsWithByteOrderMark() ? 3 - 2 * (width - 1) : 0;
        while (unit(from) != END) {
            int to = rowEnd(from);
            rows += hasInk(from, to) ? 1 : 0;
            from = to + (unit(to) == '\r' && unit(to + 1) == '\n' ? 2 : 1);
        }
        return rows;
    }

    /** The place of the line end that closes the row. */
    private int rowEnd(int from) {
        int at = from;
        boolean cellStarts = true;
        while (!endsLine(unit(at))) {
            if (cellStarts && unit(at) == '"') {
                at = afterQuote(at + 1);
                if (at < 0 || !(endsLine(unit(at)) || unit(at) == separator)) {
                    return lineEnd(from);
                }
            } else {
                cellStarts = unit(at) == separator;
                at++;
            }
        }
        return at;
    }

    /** The place after the lone quote, or -1 where none comes soon enough. */
    private int afterQuote(int from) {
        int lines = 0;
        for (int at = from; unit(at) != END && lines < MOST_LINES; at++) {
            if (unit(at) == '\n' || unit(at) == '\r' && unit(at + 1) != '\n') {
                lines++;
            }
            if (unit(at) == '"') {
                if (unit(at + 1) != '"') {
                    return at + 1;
                }
                at++;
            }
        }
        return -1;
    }

    private int lineEnd(int from) {
        int at = from;
        while (!endsLine(unit(at))) {
            at++;
        }
        return at;
    }

    private boolean hasInk(int from, int to) {
        for (int at = from; at < to; at++) {
            int c = unit(at);
            if (c != ' ' && c != '\t' && c != '\r' && c != '\n' && c != ',' && c != ';' && c != '"') {
                return true;
            }
        }
        return false;
    }

    private boolean startsWithByteOrderMark() {
        return width == 2 ? unit(0) == 0xFEFF : unit(0) == 0xEF && unit(1) == 0xBB && unit(2) == 0xBF;
    }

    private static boolean endsLine(int unit) {
        return unit == '\n' || unit == '\r' || unit == END;
    }

    /** The character's code unit there, or -1 past the end; half a unit at the end counts as one. */
    private int unit(int index) {
        int at = index * width;
        if (at >= bytes.length) {
            return END;
        }
        int first = bytes[at] & 0xFF;
        if (width == 1) {
            return first;
        }
        int second = at + 1 < bytes.length ? bytes[at + 1] & 0xFF : 0xFD;
        return lowFirst ? second << 8 | first : first << 8 | second;
    }
}
