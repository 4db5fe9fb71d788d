package covewalk.verdict;

import covewalk.survey.Cove;
import covewalk.survey.Limits.ErrorPer;
import covewalk.survey.Reading;
import covewalk.survey.ReelsById;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.StandingReadings;
import covewalk.survey.Survey;
import covewalk.verdict.claim.Claims;
import covewalk.verdict.evidence.Evidence;
import covewalk.verdict.stretch.ColourOf;
import covewalk.verdict.stretch.PlacementRow;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stations;
import covewalk.verdict.stretch.Stretch;
import covewalk.verdict.stretch.Stretches;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Judges a survey: from its readings to the verdict on every joint, and to the faults. */
public final class Judge {

    private record CoveRows(Cove cove, List<Station> stations, List<PlacementRow> rows) {
    }

    /**
     * @param log the readings as logged, corrections and withdrawals among them; those whose cove the survey does
     *     not know are left out
     */
    public Judgement judge(Survey survey, List<Reading> log) {
        return judge(survey, log, false);
    }

    /**
     * @param log as above
     * @param correctDrift whether a drift that a reference spot shows is taken off the readings, linearly in time
     */
    public Judgement judge(Survey survey, List<Reading> log, boolean correctDrift) {
        List<Reading> standing = StandingReadings.of(log);
        Evidence evidence = new Evidence(survey, standing, correctDrift);
        List<CoveRows> coves = rows(survey, standing, evidence);
        List<List<Stretch>> stretches = stretches(survey, coves);
        ReelsById reels = new ReelsById(survey);
        double rateOfOne = Rates.ofOneJoint(survey);
        List<List<JudgedJoint>> joints = forEach(coves, i -> {
            JointJudge judge = new JointJudge(survey, reels, coves.get(i).cove(), coves.get(i).rows(), stretches.get(i), evidence,
                    rateOfOne);
            return coves.get(i).cove().joints().stream().map(judge::judge).toList();
        });
        List<List<JudgedJoint>> held = survey.limits().errorPer() == ErrorPer.SURVEY
                ? HolmVerdicts.over(joints, survey.limits()) : joints;
        List<CoveJudgement> judged = forEach(coves, i -> {
            CoveRows rows = coves.get(i);
            List<Fault> faults = new FaultFinder(survey, reels, rows.cove(), stretches.get(i), evidence).find(held.get(i));
            return new CoveJudgement(rows.cove(), rows.stations(), stretches.get(i), held.get(i), faults);
        });
        List<Note> notes = new ArrayList<>(Notes.of(survey));
        notes.addAll(new EvidenceNotes(survey, evidence, correctDrift).of(judged));
        return new Judgement(survey, judged, notes,
                Claims.of(survey, stretches.stream().flatMap(List::stream).toList()));
    }

    /** Coves do not touch each other, so all processors may work on them; the answers stay in the order of the coves. */
    private static <T> List<T> forEach(List<CoveRows> coves, IntFunction<T> work) {
        return IntStream.range(0, coves.size()).parallel().mapToObj(work).toList();
    }

    private static List<CoveRows> rows(Survey survey, List<Reading> standing, ColourOf colours) {
        Map<String, List<Reading>> byCove = standing.stream()
                .filter(reading -> reading.role() == Role.WALK)
                .collect(Collectors.groupingBy(Reading::cove));
        return survey.coves().parallelStream().map(cove -> {
            List<Station> stations = Stations.of(byCove.getOrDefault(cove.id(), List.of()), colours);
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
            List<List<Stretch>> found = finder.settled(rows.parallelStream().map(finder::of).toList());
            for (int i = 0; i < found.size(); i++) {
                byCove.get(i).addAll(found.get(i)); // along the cove, one set-up after the other
            }
        }
        return byCove;
    }
}
