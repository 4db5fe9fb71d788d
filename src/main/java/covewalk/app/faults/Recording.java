package covewalk.app.faults;

import covewalk.app.open.DiskWork;
import covewalk.report.punch.EarlierVisit;
import covewalk.report.punch.NumberedList;
import covewalk.report.punch.PunchItem;
import covewalk.survey.Problem;
import covewalk.survey.file.disk.NotKept;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.punch.PunchChange;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.log.ReadingLog;
import covewalk.verdict.Judgement;
import java.io.IOException;
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
        Outcome<NumberedList> numbered = NumberedList.of(log.lock().folder(), judgement, before, List.of());
        Optional<PunchItem> item = numbered.value().flatMap(all -> all.list().items().stream().filter(which).findFirst());
        if (item.isEmpty()) {
            return numbered.problems();
        }
        try {
            return numbered.value().orElseThrow().recorded(log.lock(),
                    List.of(new PunchChange(item.get().number(), Optional.empty(), cells))).problems();
        } catch (NotKept notKept) {
            return List.of(notKept.problem());
        }
    }
}
