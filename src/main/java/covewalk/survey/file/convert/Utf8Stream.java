package covewalk.survey.file.convert;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** A stream of UTF-16 as UTF-8; streams in which each ASCII character is one byte pass as they are. */
final class Utf8Stream extends InputStream {

    private static final int CHARS = 1 << 14;

    private final Reader reader;
    private final char[] chars = new char[CHARS + 1];
    private int kept;
    private byte[] bytes = new byte[0];
    private int at;

    private Utf8Stream(InputStream wide, Charset charset) {
        reader = new InputStreamReader(wide, charset);
    }

    /** Looks at the byte order mark, and does nothing where it is none of UTF-16. */
    static InputStream of(InputStream in) throws IOException {
        BufferedInputStream peeked = new BufferedInputStream(in, 1 << 16);
        peeked.mark(2);
        int first = peeked.read();
        int second = peeked.read();
        peeked.reset();
        if (first == 0xFF && second == 0xFE) {
            return new Utf8Stream(peeked, StandardCharsets.UTF_16LE);
        }
        return first == 0xFE && second == 0xFF ? new Utf8Stream(peeked, StandardCharsets.UTF_16BE) : peeked;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] to, int from, int most) throws IOException {
        if (at == bytes.length && !encodeMore()) {
            return -1;
        }
        int length = Math.min(most, bytes.length - at);
        System.arraycopy(bytes, at, to, from, length);
        at += length;
        return length;
    }

    private boolean encodeMore() throws IOException {
        int read = reader.read(chars, kept, CHARS - kept);
        int end = kept + Math.max(read, 0);
        boolean half = read > 0 && Character.isHighSurrogate(chars[end - 1]); // its other half comes with the next chars
        bytes = new String(chars, 0, half ? end - 1 : end).getBytes(StandardCharsets.UTF_8);
        at = 0;
        kept = half ? 1 : 0;
        chars[0] = half ? chars[end - 1] : chars[0];
        return end > 0 && (bytes.length > 0 || half && encodeMore());
    }
}
