package covewalk.survey.file.meter;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A file's bytes as text, without the byte order mark.
 *
 * @param charset what they were read as
 */
public record FileText(String text, Charset charset) {

    /** What is tried on bytes that are no UTF-8: Western Europe first, then Japan and China. */
    private static final List<String> OLDER = List.of("windows-1252", "Shift_JIS", "GB18030");
    private static final int SAMPLE = 4096;

    /**
     * The text in every encoding that the bytes may be in, likeliest first. One where a byte order mark or sound UTF-8
     * settles it; several where only the words can tell.
     */
    public static List<FileText> readingsOf(byte[] bytes) {
        Optional<Charset> marked = wide(bytes);
        if (marked.isPresent()) {
            return List.of(of(bytes, marked.get()));
        }
        if (isUtf8(bytes)) {
            return List.of(of(bytes, StandardCharsets.UTF_8));
        }
        List<FileText> readings = new ArrayList<>();
        OLDER.stream().filter(Charset::isSupported).forEach(name -> readings.add(of(bytes, Charset.forName(name))));
        return readings;
    }

    static FileText of(byte[] bytes, Charset charset) {
        String text = new String(bytes, charset);
        return new FileText(text.startsWith("\uFEFF") ? text.substring(1) : text, charset);
    }

    private static Optional<Charset> wide(byte[] bytes) {
        if (bytes.length >= 2 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE) {
            return Optional.of(StandardCharsets.UTF_16LE);
        }
        if (bytes.length >= 2 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF) {
            return Optional.of(StandardCharsets.UTF_16BE);
        }
        return wideWithoutMark(bytes);
    }

    /** Plain words in UTF-16 have a zero in every other byte; nothing else has. */
    private static Optional<Charset> wideWithoutMark(byte[] bytes) {
        int pairs = Math.min(bytes.length, SAMPLE) / 2;
        int[] zeros = new int[2];
        for (int i = 0; i < 2 * pairs; i++) {
            zeros[i % 2] += bytes[i] == 0 ? 1 : 0;
        }
        if (pairs > 0 && zeros[1] > pairs / 2 && zeros[0] == 0) {
            return Optional.of(StandardCharsets.UTF_16LE);
        }
        return pairs > 0 && zeros[0] > pairs / 2 && zeros[1] == 0 ? Optional.of(StandardCharsets.UTF_16BE) : Optional.empty();
    }

    private static boolean isUtf8(byte[] bytes) {
        try {
            StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(ByteBuffer.wrap(bytes));
            return true;
        } catch (CharacterCodingException otherEncoding) {
            return false;
        }
    }
}
