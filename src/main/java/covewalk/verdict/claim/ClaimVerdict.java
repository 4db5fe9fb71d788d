package covewalk.verdict.claim;

import covewalk.verdict.limit.Verdict;
import java.util.Locale;

/** What the readings support of a statement on a label, at the survey's error rate, each reel by itself. */
public enum ClaimVerdict {
    /** The readings show the statement: the reel lies within its claim, or in its quadrangle. */
    SHOWN,
    /** The readings lie outside of what is stated. It says nothing of why: age, heat, paint and supply do that too. */
    NOT_SHOWN,
    /** Neither can be said; with handheld meters, whose own error counts here, the usual outcome. */
    UNSETTLED,
    /** No readings, or nothing stated to compare them with. */
    NOT_READ;

    static ClaimVerdict of(Verdict verdict) {
        return switch (verdict) {
            case WITHIN -> SHOWN;
            case BEYOND -> NOT_SHOWN;
            case UNSETTLED -> UNSETTLED;
            case NOT_READ -> NOT_READ;
        };
    }

    /** The word in files. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
