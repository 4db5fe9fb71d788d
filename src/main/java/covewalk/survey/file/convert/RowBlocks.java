package covewalk.survey.file.convert;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;

/** Cuts a stream into blocks of whole rows. */
final class RowBlocks {

    private static final int BLOCK = 1 << 18;
    /** A row longer than this is no row of a table. */
    private static final int LONGEST_ROW = 1 << 24;

    private final InputStream in;
    private byte[] bytes = new byte[BLOCK];
    private int filled;
    private boolean last;
    private boolean tooLong;

    RowBlocks(InputStream in) {
        this.in = in;
    }

    /** The first bytes, without taking them. */
    byte[] peek() throws IOException {
        fill();
        return bytes;
    }

    int filled() {
        return filled;
    }

    boolean last() {
        return last;
    }

    /** Whether it stopped at a row that is longer than any. */
    boolean tooLong() {
        return tooLong;
    }

    /** The next rows, or empty at the end. */
    Optional<RowBlock> next(char separator, int start) throws IOException {
        int from = start;
        while (true) {
            fill();
            int end = lastRowEnd(separator, from);
            if (end > from) {
                return Optional.of(cut(from, end));
            }
            if (last) {
                return Optional.empty();
            }
            if (bytes.length >= LONGEST_ROW) {
                tooLong = true;
                return Optional.empty();
            }
            bytes = Arrays.copyOf(bytes, 2 * bytes.length);
        }
    }

    private RowBlock cut(int from, int end) {
        RowBlock block = new RowBlock(bytes, from, end);
        byte[] rest = new byte[Math.max(BLOCK, filled - end)];
        System.arraycopy(bytes, end, rest, 0, filled - end);
        filled -= end;
        bytes = rest;
        return block;
    }

    private void fill() throws IOException {
        while (!last && filled < bytes.length) {
            int read = in.read(bytes, filled, bytes.length - filled);
            last = read < 0;
            filled += Math.max(read, 0);
        }
    }

    /** Behind the line end of the last row that is whole. */
    private int lastRowEnd(char separator, int from) {
        RowCells cells = new RowCells(separator);
        int at = from;
        while (at < filled) {
            int end = cells.split(bytes, at, filled, last);
            boolean halfALineEnd = end == filled - 1 && bytes[end] == '\r' && !last;
            if (end == RowCells.MORE || halfALineEnd) {
                return at;
            }
            at = end + TableHead.lineEndLength(bytes, end, filled);
        }
        return at;
    }
}
