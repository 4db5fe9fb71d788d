package covewalk.survey.file.seal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * What a seal says, to be printed: its code, and each file with its SHA-256.
 *
 * @param files by name
 */
public record SealRecord(String code, List<File> files) {

    /**
     * One sealed file.
     *
     * @param name folders parted by {@code /}
     * @param length how many bytes are sealed: of a log its whole rows, of others all
     * @param sha256 of these bytes, in hexadecimal
     */
    public record File(String name, long length, String sha256) {
    }

    public SealRecord {
        files = List.copyOf(files);
    }

    /** Of the survey as it is now, whether it was sealed or not. */
    public static SealRecord of(Path folder) throws IOException {
        SealEntry now = SealedFiles.in(folder);
        return new SealRecord(now.code(), now.files().stream()
                .map(file -> new File(file.name(), file.length(), file.sha256())).toList());
    }
}
