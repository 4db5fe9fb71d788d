package covewalk.survey.file;

import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FoundFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Finds the pictures of a reel, a cove or an item by their names. */
public final class Photos {

    /** So that a page stays one that can be mailed (common practice, no source). */
    private static final int MOST_SHOWN = 8;

    private Photos() {
    }

    /**
     * Pictures whose name begins with {@code id}, whatever its case, and goes on with neither a letter nor a digit:
     * {@code R1.jpg} and {@code R1-label.png} of reel R1, and not {@code R10.jpg}. Links are not followed.
     *
     * @return by name; the first few come with their bytes
     */
    public static List<Photo> of(Path folder, String id) throws IOException {
        Path photos = folder.resolve(FileNames.PHOTOS);
        if (id.isBlank()) {
            return List.of();
        }
        List<Path> found = FoundFiles.under(photos).files().stream()
                .filter(file -> isOf(id, file.getFileName().toString())).sorted().toList();
        List<Photo> pictures = new ArrayList<>();
        for (Path file : found) {
            String name = photos.relativize(file).toString().replace('\\', '/');
            boolean shown = pictures.size() < MOST_SHOWN && Files.size(file) <= Photo.MOST_BYTES;
            pictures.add(shown ? Photo.of(name, Files.readAllBytes(file)) : new Photo(name, ""));
        }
        return pictures;
    }

    private static boolean isOf(String id, String name) {
        boolean begins = name.toLowerCase(Locale.ROOT).startsWith(id.toLowerCase(Locale.ROOT));
        return begins && (name.length() == id.length() || !Character.isLetterOrDigit(name.codePointAt(id.length())));
    }
}
