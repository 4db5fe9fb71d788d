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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The items of a survey with their numbers and states, as its log has them.
 *
 * @param list empty where the log cannot be read
 * @param before the visit that this one follows
 * @param corrected whether a drift was taken off on that visit too
 * @param problems why not, and what is to be known
 */
record PunchReading(Optional<PunchList> list, Optional<EarlierVisit> before, boolean corrected, List<Problem> problems) {

    /**
     * Reads, and writes nothing.
     *
     * @param known the visit before, where it was judged already in the same way, since it does not change
     */
    static PunchReading of(Path folder, Judgement judgement, boolean correctDrift, Optional<PunchReading> known) {
        List<Problem> problems = new ArrayList<>();
        try {
            Optional<EarlierVisit> before = known.isPresent() ? known.get().before()
                    : EarlierVisit.of(folder, judgement.survey(), correctDrift, problems);
            Outcome<NumberedList> numbered = NumberedList.of(folder, judgement, before, List.of());
            problems.addAll(numbered.problems());
            return new PunchReading(numbered.value().map(NumberedList::list), before, correctDrift, problems);
        } catch (IOException failed) {
            problems.add(Problem.refusal("folder.failed", DiskWords.reason(failed)));
            return new PunchReading(Optional.empty(), Optional.empty(), correctDrift, problems);
        }
    }
}
