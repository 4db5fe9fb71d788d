package covewalk.verdict;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What kind of place asks for action. */
public enum FaultKind {
    /** Two reels meet and differ. */
    JOINT,
    /** The colour changes abruptly inside a reel. */
    MID_REEL,
    /** The colour changes steadily along a stretch. */
    DRIFT,
    /** A placement lies off the cove's target. */
    OFF_TARGET,
    /** One station lies off its neighbours on both sides. */
    LONE_STATION;

    /** The word in files and on the command line. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The kind of this word. */
    public static Optional<FaultKind> of(String code) {
        return Arrays.stream(values()).filter(kind -> kind.code().equals(code)).findFirst();
    }
}
