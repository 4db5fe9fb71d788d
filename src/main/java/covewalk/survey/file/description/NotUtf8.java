package covewalk.survey.file.description;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/** Finds where a text stops being UTF-8, as when an old editor saved it in the system's own encoding. */
final class NotUtf8 {

    private static final int PIECE = 4096;

    private NotUtf8() {
    }

    /** The line of the first character that is none, from 1; 0 where all are, or where it is UTF-16 or UTF-32 by its mark or zeros. */
    static int line(byte[] text) {
        if (isWide(text)) {
            return 0;
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer bytes = ByteBuffer.wrap(text);
        CharBuffer piece = CharBuffer.allocate(PIECE);
        CoderResult result = decoder.decode(bytes, piece, true);
        while (result.isOverflow()) {
            piece.clear();
            result = decoder.decode(bytes, piece, true);
        }
        return result.isError() ? lineAt(text, bytes.position()) : 0;
    }

    private static boolean isWide(byte[] text) {
        return text.length >= 2 && (text[0] == 0 || text[1] == 0 || (text[0] & 0xfe) == 0xfe && (text[1] & 0xfe) == 0xfe);
    }

    private static int lineAt(byte[] text, int end) {
        int line = 1;
        for (int i = 0; i < end; i++) {
            line += text[i] == '\n' ? 1 : 0;
        }
        return line;
    }
}
