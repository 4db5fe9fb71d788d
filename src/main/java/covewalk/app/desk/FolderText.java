package covewalk.app.desk;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** A folder or file as people type and paste it: with quotation marks around it, or with ~ for their own folder. */
public final class FolderText {

    private FolderText() {
    }

    /**
     * What was typed, as a whole path.
     *
     * @param home the user's own folder
     * @return empty where nothing was typed, or no name for a folder
     */
    public static Optional<Path> path(String typed, Path home) {
        String text = typed.strip();
        if (text.length() > 1 && (text.startsWith("\"") && text.endsWith("\"") || text.startsWith("'") && text.endsWith("'"))) {
            text = text.substring(1, text.length() - 1).strip();
        }
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            boolean own = text.equals("~") || text.startsWith("~/") || text.startsWith("~\\");
            return Optional.of((own ? home.resolve(text.substring(Math.min(2, text.length()))) : Path.of(text)).toAbsolutePath().normalize());
        } catch (InvalidPathException noPath) {
            return Optional.empty();
        }
    }

    /** A folder's name made of a site's: what every system takes, in small letters. */
    public static String name(String site) {
        String plain = site.strip().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{Nd}]+", "-").replaceAll("^-|-$", "");
        return plain.length() <= 40 ? plain : plain.substring(0, 40);
    }
}
