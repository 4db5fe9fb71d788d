package covewalk.survey;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a reading is for. */
public enum Role {
    /** One of the readings that are judged. */
    WALK,
    /** At the spot that is read again and again, to see light or meter drift. */
    REFERENCE,
    /** With the cove off, at the same spot. */
    DARK;

    private static final Map<String, Optional<Role>> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Role::code, Optional::of));

    private final String code = name().toLowerCase(Locale.ROOT);

    /** The word in a reading log. */
    public String code() {
        return code;
    }

    /** The role of this word; empty where there is none. Asked a million times for a large log. */
    public static Optional<Role> of(String code) {
        return BY_CODE.getOrDefault(code, Optional.empty());
    }
}
