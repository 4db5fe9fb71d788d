package covewalk.survey.file.convert;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Bytes of rows being written. */
final class RowBuffer {

    private static final int LONGEST_NUMBER = 40;

    private byte[] bytes = new byte[1 << 16];
    private int size;

    void add(char ascii) {
        room(1);
        bytes[size++] = (byte) ascii;
    }

    void add(byte[] from, int start, int end) {
        room(end - start);
        System.arraycopy(from, start, bytes, size, end - start);
        size += end - start;
    }

    /** Text of ASCII letters. */
    void addText(String ascii) {
        for (int i = 0; i < ascii.length(); i++) {
            add(ascii.charAt(i));
        }
    }

    /** As a cell in quotes, with the quotes in it doubled. */
    void addQuoted(byte[] from, int start, int end) {
        add('"');
        for (int i = start; i < end; i++) {
            if (from[i] == '"') {
                add('"');
            }
            add((char) from[i]);
        }
        add('"');
    }

    /** A number of so many units of the last of its decimals; not negative. */
    void addDecimal(long units, int decimals) {
        room(LONGEST_NUMBER);
        int length = Math.max(lengthOf(units), decimals + 1) + (decimals > 0 ? 1 : 0);
        long rest = units;
        for (int at = size + length - 1; at >= size; at--) {
            if (decimals > 0 && at == size + length - 1 - decimals) {
                bytes[at] = '.';
            } else {
                bytes[at] = (byte) ('0' + rest % 10);
                rest /= 10;
            }
        }
        size += length;
    }

    private static int lengthOf(long units) {
        int length = 1;
        for (long rest = units; rest >= 10; rest /= 10) {
            length++;
        }
        return length;
    }

    private void room(int more) {
        if (bytes.length - size < more) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
        }
    }

    void writeTo(OutputStream out) throws IOException {
        out.write(bytes, 0, size);
    }

    /** What is in it as text, one character a byte. */
    String text() {
        return new String(bytes, 0, size, StandardCharsets.ISO_8859_1);
    }
}
