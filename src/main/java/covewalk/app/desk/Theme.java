package covewalk.app.desk;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How light the screen is. */
public enum Theme {
    /** For a dim site: it hardly lights the ceiling that is being measured. */
    DARK,
    LIGHT,
    /** Black on white with thick outlines. */
    CONTRAST;

    /** The word in texts and settings. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Theme> of(String code) {
        return Arrays.stream(values()).filter(theme -> theme.code().equals(code)).findFirst();
    }
}
