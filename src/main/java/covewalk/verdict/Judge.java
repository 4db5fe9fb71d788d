package covewalk.verdict;

import covewalk.survey.Cove;
import covewalk.survey.Limits.ErrorPer;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.StandingReadings;
import covewalk.survey.Survey;
import covewalk.verdict.stretch.PlacementRow;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stations;
import covewalk.verdict.stretch.Stretch;
import covewalk.verdict.stretch.Stretches;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Judges a survey: from its readings to the verdict on every joint, and to the faults. */
public final class Judge {

    private record CoveRows(Cove cove, List<Station> stations, List<PlacementRow> rows) {
    }

    /**
     * @param log the readings as logged, corrections and withdrawals among them; those whose cove the survey does
     *     not know are left out
     */
    public Judgement judge(Survey survey, List<Reading> log) {
        List<CoveRows> coves = rows(survey, log);
        List<List<Stretch>> stretches = stretches(survey, coves);
        List<List<JudgedJoint>> joints = new ArrayList<>();
        for (int i = 0; i < coves.size(); i++) {
            JointJudge judge = new JointJudge(survey, coves.get(i).cove(), coves.get(i).rows(), stretches.get(i));
            joints.add(coves.get(i).cove().joints().stream().map(judge::judge).toList());
        }
        if (survey.limits().errorPer() == ErrorPer.SURVEY) {
            joints = HolmVerdicts.over(joints, survey.limits().errorRate());
        }
        return new Judgement(survey, judged(survey, coves, stretches, joints), Notes.of(survey));
    }

    private static List<CoveJudgement> judged(Survey survey, List<CoveRows> coves, List<List<Stretch>> stretches,
                                              List<List<JudgedJoint>> joints) {
        List<CoveJudgement> judged = new ArrayList<>();
        for (int i = 0; i < coves.size(); i++) {
            CoveRows rows = coves.get(i);
            List<Fault> faults = new FaultFinder(survey, rows.cove(), stretches.get(i)).find(joints.get(i));
            judged.add(new CoveJudgement(rows.cove(), rows.stations(), stretches.get(i), joints.get(i), faults));
        }
        return judged;
    }

    private static List<CoveRows> rows(Survey survey, List<Reading> log) {
        Map<String, List<Reading>> byCove = StandingReadings.of(log).stream()
                .filter(reading -> reading.role() == Role.WALK)
                .collect(Collectors.groupingBy(Reading::cove));
        return survey.coves().stream().map(cove -> {
            List<Station> stations = Stations.of(byCove.getOrDefault(cove.id(), List.of()));
            List<PlacementRow> rows = survey.setUps().stream()
                    .flatMap(setUp -> PlacementRow.of(cove, stations, setUp).stream()).toList();
            return new CoveRows(cove, stations, rows);
        }).toList();
    }

    /** Set-up by set-up, since each has its own noise, pooled over all coves; in the order of the coves. */
    private static List<List<Stretch>> stretches(Survey survey, List<CoveRows> coves) {
        List<List<Stretch>> byCove = coves.stream().<List<Stretch>>map(cove -> new ArrayList<>()).toList();
        for (SetUp setUp : survey.setUps()) {
            List<List<PlacementRow>> rows = coves.stream()
                    .map(cove -> cove.rows().stream().filter(row -> row.setUp() == setUp).toList()).toList();
            Stretches finder = new Stretches(rows.stream().flatMap(List::stream).toList(), setUp);
            List<List<Stretch>> found = finder.settled(rows.stream().map(finder::of).toList());
            for (int i = 0; i < found.size(); i++) {
                byCove.get(i).addAll(found.get(i)); // along the cove, one set-up after the other
            }
        }
        return byCove;
    }
}
