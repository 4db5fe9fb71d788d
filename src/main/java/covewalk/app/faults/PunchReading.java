package covewalk.app.faults;

import covewalk.report.EarlierVisit;
import covewalk.report.NumberedList;
import covewalk.report.PunchList;
import covewalk.survey.Problem;
import covewalk.survey.file.DiskWords;
import covewalk.survey.file.Outcome;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The items of a survey with their numbers and states, as its log has them.
 *
 * @param numbered empty where the log cannot be read
 * @param corrected whether a drift was taken off on the visit before too
 * @param problems why not
 */
record PunchReading(Optional<NumberedList> numbered, boolean corrected, List<Problem> problems) {

    /**
     * Reads, and writes nothing.
     *
     * @param known with the visit before, where that was judged already in the same way, since it does not change
     */
    static PunchReading of(Path folder, Judgement judgement, boolean correctDrift, Optional<NumberedList> known) {
        try {
            Outcome<NumberedList> numbered = known.isEmpty() ? NumberedList.of(folder, judgement, correctDrift)
                    : NumberedList.of(folder, judgement, known.get().list().before(), known.get().ofOldVisit());
            return new PunchReading(numbered.value(), correctDrift, numbered.problems());
        } catch (IOException failed) {
            return new PunchReading(Optional.empty(), correctDrift,
                    List.of(Problem.refusal("folder.failed", DiskWords.reason(failed))));
        }
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
