package covewalk.cli;

import covewalk.report.punch.PunchList;
import covewalk.survey.file.punch.PunchStage;
import covewalk.verdict.Judgement;
import covewalk.verdict.limit.Verdict;
import java.util.Set;
import java.util.stream.Collectors;

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

    /** By what is still to do: an accepted item is closed, whatever the readings say. */
    static int of(PunchList list) {
        Set<Verdict> open = list.items().stream().filter(item -> item.state().stage() != PunchStage.ACCEPTED)
                .map(item -> item.fault().verdict()).collect(Collectors.toSet());
        if (open.contains(Verdict.BEYOND)) {
            return BEYOND;
        }
        return open.isEmpty() && !leavesPlacesUnread(list) ? DONE : OPEN;
    }

    /** An item whose place was not read this time is not known to be put right. */
    private static boolean leavesPlacesUnread(PunchList list) {
        return list.gone().stream().anyMatch(item -> !item.read() && item.state().stage() != PunchStage.ACCEPTED);
    }
}
