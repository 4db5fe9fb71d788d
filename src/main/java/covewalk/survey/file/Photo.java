package covewalk.survey.file;

import java.util.Base64;

/**
 * A picture in the survey's folder {@code photos}.
 *
 * @param name below {@code photos}, folders parted by {@code /}
 * @param dataUri its bytes as a page can hold them; empty where it is too large, or neither JPEG nor PNG
 */
public record Photo(String name, String dataUri) {

    /** Larger ones would make a page that nobody can mail (common practice, no source). */
    static final int MOST_BYTES = 1 << 20;

    static Photo of(String name, byte[] bytes) {
        String type = type(bytes);
        return new Photo(name, type.isEmpty() ? "" : "data:" + type + ";base64," + Base64.getEncoder().encodeToString(bytes));
    }

    /** By its first bytes, whatever it is called (JPEG: ISO/IEC 10918-1; PNG: ISO/IEC 15948, 5.2). */
    private static String type(byte[] bytes) {
        if (bytes.length > 8 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xd8 && (bytes[2] & 0xff) == 0xff) {
            return "image/jpeg";
        }
        boolean png = bytes.length > 8 && (bytes[0] & 0xff) == 0x89 && bytes[1] == 'P' && bytes[2] == 'N' && bytes[3] == 'G'
                && bytes[4] == '\r' && bytes[5] == '\n';
        return png ? "image/png" : "";
    }
}
