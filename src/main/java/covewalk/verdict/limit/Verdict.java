package covewalk.verdict.limit;

import java.util.Locale;

/** What the readings support. */
public enum Verdict {
    /** Farther apart than the limit, as sure as the survey asks. */
    BEYOND,
    /** Inside the limit, as sure as the survey asks. */
    WITHIN,
    /** Neither can be said yet. */
    UNSETTLED,
    /** No readings to judge by. */
    NOT_READ;

    /** The word in files and on the command line. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
