package covewalk.app.faults;

import covewalk.report.punch.EarlierVisit;
import covewalk.report.punch.NumberedList;
import covewalk.report.punch.PunchList;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.DiskWords;
import covewalk.survey.file.disk.Outcome;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The items of a survey with their numbers and states, as its log has them.
 *
 * @param numbered empty where the log cannot be read
 * @param corrected whether a drift was taken off on the visit before too
 * @param problems why not; none where it is a fault of this program
 */
record PunchReading(Optional<NumberedList> numbered, boolean corrected, List<Problem> problems) {

    private static final Logger LOG = Logger.getLogger("covewalk.app");

    /**
     * Reads, and writes nothing.
     *
     * @param known with the visit before, where that was judged already in the same way, since it does not change
     */
    static PunchReading of(Path folder, Judgement judgement, boolean correctDrift, Optional<NumberedList> known) {
        try {
            Outcome<NumberedList> numbered = known.isEmpty() ? NumberedList.of(folder, judgement, correctDrift)
                    : NumberedList.of(folder, judgement, known.get().list().before(), known.get().ofOldVisit());
            if (!Files.isDirectory(folder)) { // asked afterwards: a log that is missing with its folder is no new log
                return without(correctDrift, List.of(Problem.refusal("folder.gone")));
            }
            return new PunchReading(numbered.value(), correctDrift, numbered.problems());
        } catch (IOException failed) {
            return without(correctDrift, List.of(Problem.refusal("folder.failed", DiskWords.reason(failed))));
        } catch (RuntimeException | Error fault) { // whoever looks at the item waits for an answer
            LOG.log(Level.WARNING, "could not look up an item", fault);
            return without(correctDrift, List.of());
        }
    }

    private static PunchReading without(boolean correctDrift, List<Problem> why) {
        return new PunchReading(Optional.empty(), correctDrift, why);
    }

    /** The list itself; empty where the log cannot be read. */
    Optional<PunchList> list() {
        return numbered.map(NumberedList::list);
    }

    /** The visit that this one follows. */
    Optional<EarlierVisit> before() {
        return list().flatMap(PunchList::before);
    }
}
