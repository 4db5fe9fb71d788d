package covewalk.app.faults;

import covewalk.app.open.DiskWork;
import covewalk.report.EarlierVisit;
import covewalk.report.PunchItem;
import covewalk.report.PunchList;
import covewalk.survey.Problem;
import covewalk.survey.file.NotKept;
import covewalk.survey.file.Outcome;
import covewalk.survey.file.PunchChange;
import covewalk.survey.file.PunchColumn;
import covewalk.survey.file.PunchLog;
import covewalk.survey.file.ReadingLog;
import covewalk.verdict.Judgement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Records in the survey's log how an item stands. Numbers are given by the log as it is at that moment, and fixed with it.
 *
 * @param judgement in which the item was found
 * @param before the visit that this one follows
 * @param which one of the list's items
 * @param cells what is new
 */
record Recording(Judgement judgement, Optional<EarlierVisit> before, Predicate<PunchItem> which, Map<PunchColumn, String> cells)
        implements DiskWork<List<Problem>> {

    /** @return why it could not be recorded, or what is to be known although it was */
    @Override
    public List<Problem> with(ReadingLog log) throws IOException {
        Outcome<PunchLog> opened = PunchLog.open(log.lock());
        List<Problem> problems = new ArrayList<>(opened.problems());
        if (opened.refused()) {
            return problems;
        }
        try (PunchLog punch = opened.value().orElseThrow()) {
            PunchList list = PunchList.of(judgement, punch.states(), before);
            Optional<PunchItem> item = list.items().stream().filter(which).findFirst();
            if (item.isPresent()) {
                List<PunchChange> rows = new ArrayList<>(list.registrations());
                rows.add(new PunchChange(item.get().number(), Optional.empty(), cells));
                punch.append(rows);
            }
        } catch (NotKept notKept) {
            problems.add(notKept.problem());
        }
        return problems;
    }
}
