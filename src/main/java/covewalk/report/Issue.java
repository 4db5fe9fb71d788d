package covewalk.report;

import covewalk.report.punch.Audit;
import covewalk.report.punch.NumberedList;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.file.disk.DiskWords;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.NotKept;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.seal.Seal;
import covewalk.survey.file.seal.SealRecord;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A report about to go out: its items are numbered, and the survey is sealed for it. The numbers come first, since the
 * seal is to cover them.
 *
 * @param seal empty where the survey is not sealed
 * @param whyUnsealed why not, and what to know of the log of items; each told in full
 */
public record Issue(NumberedList numbered, Optional<SealRecord> seal, List<Problem> whyUnsealed) {

    public Issue {
        whyUnsealed = List.copyOf(whyUnsealed);
    }

    /**
     * Fixes the numbers of the items in the survey's log and seals the survey. Where the folder cannot be written the report
     * may go out all the same: it says so.
     *
     * @return refused where the log of items is damaged; nothing was written then
     */
    public static Outcome<Issue> under(FolderLock lock, Judgement judgement, boolean correctDrift) throws IOException {
        Outcome<NumberedList> asRead = NumberedList.of(lock.folder(), judgement, correctDrift);
        if (asRead.refused()) {
            return new Outcome<>(Optional.empty(), asRead.problems());
        }
        NumberedList numbered = asRead.value().orElseThrow();
        try {
            Outcome<NumberedList> fixed = numbered.recorded(lock, List.of());
            return new Outcome<>(fixed.value().map(list -> sealed(lock, list, fixed.problems())),
                    fixed.refused() ? fixed.problems() : List.of());
        } catch (NotKept notKept) {
            return unsealed(numbered, List.of(notKept.problem()));
        } catch (IOException failed) {
            return unsealed(numbered, List.of(Problem.refusal("folder.failed", DiskWords.reason(failed))));
        }
    }

    /**
     * Leaves the survey's folder as it is, since its lock cannot be had.
     *
     * @param why the lock cannot be had
     * @return refused where the log of items is damaged
     */
    public static Outcome<Issue> without(List<Problem> why, Path survey, Judgement judgement, boolean correctDrift) throws IOException {
        Outcome<NumberedList> asRead = NumberedList.of(survey, judgement, correctDrift);
        return asRead.refused() ? new Outcome<>(Optional.empty(), asRead.problems()) : unsealed(asRead.value().orElseThrow(), why);
    }

    private static Outcome<Issue> unsealed(NumberedList list, List<Problem> why) {
        return new Outcome<>(Optional.of(new Issue(list, Optional.empty(),
                Stream.concat(Stream.of(Problem.warning("report.not-fixed")), why.stream()).toList())), List.of());
    }

    private static Issue sealed(FolderLock lock, NumberedList list, List<Problem> ofLog) {
        try {
            Outcome<String> code = Seal.issue(lock);
            if (code.refused()) {
                return unsealed(list, ofLog, Stream.concat(code.problems().stream(), Stream.of(Problem.warning("report.seals-unreadable"))));
            }
            SealRecord now = SealRecord.of(lock.folder());
            boolean same = code.value().filter(now.code()::equals).isPresent();
            return same ? new Issue(list, Optional.of(now), ofLog)
                    : unsealed(list, ofLog, Stream.of(Problem.warning("report.changed-meanwhile")));
        } catch (IOException failed) {
            return unsealed(list, ofLog, Stream.of(Problem.warning("report.not-sealed", DiskWords.reason(failed))));
        }
    }

    private static Issue unsealed(NumberedList list, List<Problem> ofLog, Stream<Problem> why) {
        return new Issue(list, Optional.empty(), Stream.concat(ofLog.stream(), why).toList());
    }

    /** The code beside a signature; empty where the survey is not sealed. */
    public String code() {
        return seal.map(SealRecord::code).orElse("");
    }

    /**
     * What the report is made from.
     *
     * @param warnings of the survey as it was read
     */
    public Audit audit(List<Reading> log, List<Problem> warnings) {
        return new Audit(numbered.list(), log, Stream.concat(warnings.stream(), numbered.toKnow().stream()).toList(), seal);
    }
}
