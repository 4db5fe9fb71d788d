package covewalk.survey;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the meter's head looks at. Readings taken in different ways are never compared. */
public enum Reads {
    /** The strip or its diffuser, from a fixed stand-off. */
    STRIP,
    /** Light falling from the ceiling onto the head. */
    WASH,
    /** The luminance of the painted ceiling. */
    CEILING;

    /** The word in a survey file. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Reads> of(String code) {
        return Arrays.stream(values()).filter(reads -> reads.code().equals(code)).findFirst();
    }
}
