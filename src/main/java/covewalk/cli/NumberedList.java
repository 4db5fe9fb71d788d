package covewalk.cli;

import covewalk.report.EarlierVisit;
import covewalk.report.PunchList;
import covewalk.survey.Problem;
import covewalk.survey.file.FolderLock;
import covewalk.survey.file.Outcome;
import covewalk.survey.file.PunchLog;
import covewalk.survey.file.PunchStates;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The punch list of a survey with the numbers of its items.
 *
 * @param ofOldVisit what to know of the visit before
 * @param failed whether the numbers should have been fixed in the survey's log and could not be
 */
record NumberedList(PunchList list, List<Problem> ofOldVisit, boolean failed) {

    /** As the log has the numbers; writes nothing. */
    static NumberedList of(Judgement judgement, Path folder, boolean correctDrift) throws IOException, CannotBeDone {
        List<Problem> toKnow = new ArrayList<>();
        Optional<EarlierVisit> before = EarlierVisit.of(folder, judgement.survey(), correctDrift, toKnow);
        Outcome<PunchStates> recorded = PunchLog.read(folder);
        if (recorded.refused()) {
            throw CannotBeDone.because(recorded.problems());
        }
        return new NumberedList(PunchList.of(judgement, recorded.value().orElseThrow(), before), toKnow, false);
    }

    /** The same list, its numbers fixed in the survey's log; where that fails it says so, and the list stays as it is. */
    NumberedList registered(FolderLock lock, Terminal terminal) throws CannotBeDone {
        try (PunchLog log = open(lock, terminal)) {
            return new NumberedList(list.registered(log.append(list.registrations())), ofOldVisit, false);
        } catch (IOException failed) {
            terminal.err().println(Sentences.of("report.not-fixed", String.join(" ", FailureWords.linesFor(failed))));
            return new NumberedList(list, ofOldVisit, true);
        }
    }

    static PunchLog open(FolderLock lock, Terminal terminal) throws IOException, CannotBeDone {
        Outcome<PunchLog> log = PunchLog.open(lock);
        if (log.refused()) {
            throw CannotBeDone.because(log.problems());
        }
        new Warnings(log.problems()).print(terminal.err());
        return log.value().orElseThrow();
    }

    /** What to know of the visit before and of numbers that hold for this time only. */
    List<Problem> toKnow() {
        return Stream.concat(ofOldVisit.stream(), list.notFixed().stream()).toList();
    }
}
