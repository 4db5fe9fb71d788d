package covewalk.survey;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a reading is for. */
public enum Role {
    /** One of the readings that are judged. */
    WALK,
    /** At the spot that is read again and again, to see light or meter drift. */
    REFERENCE,
    /** With the cove off, at the same spot. */
    DARK;

    /** The word in a reading log. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Role> of(String code) {
        return Arrays.stream(values()).filter(role -> role.code().equals(code)).findFirst();
    }
}
