package covewalk.words;

import java.util.Locale;

/** In which unit a text gives a position first; the other one stands behind it. */
public enum LengthUnit {
    M, FT;

    /** As a command line calls it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
