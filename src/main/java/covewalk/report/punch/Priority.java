package covewalk.report.punch;

import covewalk.verdict.Fault;
import covewalk.verdict.FaultKind;
import covewalk.verdict.Note;
import covewalk.verdict.Settle;
import covewalk.verdict.limit.Verdict;
import java.util.Locale;

/** In which order to take the items (common practice, no source). */
public enum Priority {
    /** Beyond, and at least twice the limit. */
    FIRST,
    /** Beyond. */
    NEXT,
    /** More readings settle it: before the access is taken away, and before anything is taken down. */
    READ_AGAIN,
    /** More readings do not settle it: somebody has to decide. */
    AGREE;

    /** A difference this many times the limit comes first (common practice, no source). */
    private static final double FAR_BEYOND = 2;

    /** What may be a misread is read again before anything is put right. */
    static Priority of(Fault fault) {
        if (fault.kind() == FaultKind.LONE_STATION || isDoubtful(fault)) {
            return READ_AGAIN;
        }
        if (fault.verdict() == Verdict.BEYOND) {
            return fault.difference().steps() >= FAR_BEYOND * fault.limitSteps() ? FIRST : NEXT;
        }
        return fault.settle().readings().isPresent() ? READ_AGAIN : AGREE;
    }

    /** Whether its own note or its scatter asks to look at a reading again. */
    static boolean isDoubtful(Fault fault) {
        return fault.settle().whyNot() == Settle.WhyNot.SCATTER
                || fault.notes().stream().anyMatch(note -> note.kind() == Note.Kind.LAST_STATION_OFF);
    }

    /** The word in files and in the bundle of sentences. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
