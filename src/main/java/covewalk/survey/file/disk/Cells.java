package covewalk.survey.file.disk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.util.Arrays;
import java.util.Optional;

/** The cells of one row at a time, as ranges of bytes that become text only when somebody asks for it. */
public final class Cells {

    private byte[] bytes = new byte[0];
    private int count;
    private int[] from = new int[32];
    private int[] to = new int[32];
    private Damage damage;
    private int damagedCell;

    /** Splits the row between two places of {@code buffer}. Where it is damaged, the cells after that are of no use. */
    public void split(byte[] buffer, int start, int end) {
        bytes = buffer;
        count = 0;
        damage = null;
        int at = start;
        while (at <= end && damage == null) {
            boolean quoted = at < end && buffer[at] == '"';
            at = (quoted ? quotedCell(at + 1, end) : plainCell(at, end)) + 1;
        }
    }

    /** Takes the cell and returns where its comma is, or the row's end. */
    private int plainCell(int start, int end) {
        int at = start;
        while (at < end && bytes[at] != ',') {
            if (bytes[at] == '"') {
                damaged(Damage.STRAY_QUOTE);
            } else if (isControl(bytes[at])) {
                damaged(Damage.CONTROL);
            }
            at++;
        }
        add(start, at);
        return at;
    }

    private int quotedCell(int start, int end) {
        int at = start;
        while (at < end && !(bytes[at] == '"' && !doubled(at, end))) {
            if (isControl(bytes[at]) && bytes[at] != '\n' && bytes[at] != '\r') {
                damaged(Damage.CONTROL);
            }
            at += bytes[at] == '"' ? 2 : 1;
        }
        if (at + 1 < end && bytes[at + 1] != ',') {
            damaged(Damage.AFTER_QUOTE);
        }
        add(start, at);
        return at + 1;
    }

    private boolean doubled(int at, int end) {
        return at + 1 < end && bytes[at + 1] == '"';
    }

    private static boolean isControl(byte b) {
        return b >= 0 && b < ' ' && b != '\t' || b == 0x7f;
    }

    private void damaged(Damage how) {
        if (damage == null) {
            damage = how;
            damagedCell = count;
        }
    }

    private void add(int start, int end) {
        if (count == from.length) {
            from = Arrays.copyOf(from, 2 * count);
            to = Arrays.copyOf(to, 2 * count);
        }
        from[count] = start;
        to[count++] = end;
    }

    /** How many cells the row has; a row without any text has one empty cell. */
    public int count() {
        return count;
    }

    /** What is wrong with the row as text, and null where nothing is. */
    public Damage damage() {
        return damage;
    }

    /** Which cell it was found in, from 0. */
    public int damagedCell() {
        return damagedCell;
    }

    /** Whether it holds nothing but spaces. */
    public boolean isBlank(int cell) {
        int at = from[cell];
        while (at < to[cell] && bytes[at] == ' ') {
            at++;
        }
        return at == to[cell];
    }

    public byte[] bytes() {
        return bytes;
    }

    public int from(int cell) {
        return from[cell];
    }

    public int to(int cell) {
        return to[cell];
    }

    /** The cell as text, or empty where its bytes are no UTF-8. */
    public Optional<String> text(int cell) {
        int length = to[cell] - from[cell];
        if (length == 0) {
            return Optional.of("");
        }
        if (isPlainAscii(cell)) {
            return Optional.of(new String(bytes, from[cell], length, ISO_8859_1));
        }
        try {
            String text = UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, from[cell], length)).toString();
            return Optional.of(text.replace("\"\"", "\""));
        } catch (CharacterCodingException notUtf8) {
            return Optional.empty();
        }
    }

    /** Whether its bytes are its characters: no letters beyond ASCII and no doubled quotation marks. */
    boolean isPlainAscii(int cell) {
        for (int i = from[cell]; i < to[cell]; i++) {
            if (bytes[i] < 0 || bytes[i] == '"') {
                return false;
            }
        }
        return true;
    }
}
