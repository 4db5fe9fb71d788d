package covewalk.app.faults;

import covewalk.app.strip.Finding;
import covewalk.verdict.FaultKind;
import covewalk.verdict.limit.Verdict;
import java.util.Comparator;
import java.util.Locale;

/** In which order findings are listed. */
enum Order {
    /** What is beyond first, farthest beyond its limit first; single spots, which may be misreads, after everything. */
    WORST(Comparator.comparing((Finding finding) -> rank(finding))
            .thenComparing(Comparator.comparingDouble(Finding::timesTheLimit).reversed())),
    /** Cove by cove, from the datum on. */
    WALKING((one, other) -> 0);

    private final Comparator<Finding> comparator;

    Order(Comparator<Finding> comparator) {
        this.comparator = comparator;
    }

    /** Of findings that stand in walking order. */
    Comparator<Finding> comparator() {
        return comparator;
    }

    private static int rank(Finding finding) {
        boolean spot = finding.kind() == FaultKind.LONE_STATION;
        return switch (finding.verdict()) {
            case BEYOND -> spot ? 2 : 0;
            case UNSETTLED -> spot ? 3 : 1;
            case NOT_READ -> 4;
            case WITHIN -> 5;
        };
    }

    /** The word in texts. */
    String code() {
        return name().toLowerCase(Locale.ROOT);
    }
}
