package covewalk.survey.file.disk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) of files and texts. */
public final class Sha256 {

    private static final int BUFFER = 1 << 16;

    private Sha256() {
    }

    public static String of(Path file) throws IOException {
        return of(file, Long.MAX_VALUE);
    }

    /** Of the first {@code length} bytes, or of all where there are fewer. */
    public static String of(Path file, long length) throws IOException {
        MessageDigest digest = digest();
        byte[] buffer = new byte[BUFFER];
        long left = length;
        try (InputStream in = Files.newInputStream(file)) {
            while (left > 0) {
                int read = in.read(buffer, 0, (int) Math.min(buffer.length, left));
                if (read < 0) {
                    break;
                }
                digest.update(buffer, 0, read);
                left -= read;
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    public static byte[] of(byte[] bytes) {
        return digest().digest(bytes);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
