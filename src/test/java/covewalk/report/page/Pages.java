package covewalk.report.page;

import covewalk.report.punch.Audit;
import covewalk.report.punch.PunchList;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.file.seal.SealRecord;
import covewalk.verdict.Judgement;
import covewalk.verdict.stretch.Station;
import covewalk.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pages and what they are made from, for tests. */
public final class Pages {

    private static final String HASH = "ab".repeat(32);

    private Pages() {
    }

    public static Page of(Judgement judgement, String seal) {
        return of(judgement, seal, PageStyle.USUAL);
    }

    public static Page of(Judgement judgement, String seal, PageStyle style) {
        return Page.of(PunchList.of(judgement), audit(judgement, seal), style, Words.english());
    }

    /** With the readings that the judgement rests on, and two warnings. */
    public static Audit audit(Judgement judgement, String seal) {
        return new Audit(judgement, log(judgement),
                List.of(Problem.warning("survey.gap", "4", "5").at("survey.json", 12, "coves[0].placements[1].fromM"),
                        Problem.warning("survey.limit-unset").at("survey.json", 3, "limits.setBy")),
                seal.isEmpty() ? Optional.empty() : Optional.of(new SealRecord(seal,
                        List.of(new SealRecord.File("readings.csv", 1234, HASH), new SealRecord.File("survey.json", 5678, HASH)))));
    }

    private static List<Reading> log(Judgement judgement) {
        List<Reading> log = new ArrayList<>();
        for (Station station : judgement.coves().stream().flatMap(cove -> cove.stations().stream()).toList()) {
            station.readings().forEach(reading -> log.add(reading.atLine(log.size() + 2)));
        }
        return log;
    }
}
