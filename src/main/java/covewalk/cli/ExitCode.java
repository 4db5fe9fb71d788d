package covewalk.cli;

import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;

/** What a command tells the program that started it. */
final class ExitCode {

    /** Done; all is within. */
    static final int DONE = 0;
    /** Done; something is beyond the limit. */
    static final int BEYOND = 1;
    /** Could not be done. */
    static final int NOT_DONE = 2;
    /** Done; nothing is beyond, and something is unsettled, not read, or was set aside. */
    static final int OPEN = 3;

    private ExitCode() {
    }

    static int of(Judgement judgement) {
        if (judgement.count(Verdict.BEYOND) > 0) {
            return BEYOND;
        }
        return judgement.count(Verdict.UNSETTLED) + judgement.count(Verdict.NOT_READ) > 0 ? OPEN : DONE;
    }
}
