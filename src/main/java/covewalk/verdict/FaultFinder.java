package covewalk.verdict;

import covewalk.colour.StepPlane;
import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.ReelsById;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.HintTable.Pattern;
import covewalk.verdict.evidence.Evidence;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What asks for action in one cove: joints, and what the stretches show inside the reels. */
final class FaultFinder {

    private final Survey survey;
    private final ReelsById reels;
    private final Cove cove;
    private final List<Stretch> stretches;
    private final StepPlane plane;
    private final Evidence evidence;

    FaultFinder(Survey survey, ReelsById reels, Cove cove, List<Stretch> stretches, Evidence evidence) {
        this.survey = survey;
        this.reels = reels;
        this.cove = cove;
        this.stretches = stretches;
        this.plane = Planes.of(survey, cove);
        this.evidence = evidence;
    }

    /** Beyond or unsettled, along the cove. */
    List<Fault> find(List<JudgedJoint> joints) {
        List<Fault> faults = new ArrayList<>();
        joints.stream().filter(joint -> joint.difference().isPresent()).map(this::atJoint).forEach(faults::add);
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            if (i > 0 && stretches.get(i - 1).placement() == stretch.placement()
                    && stretches.get(i - 1).setUp().equals(stretch.setUp())) {
                faults.add(midReel(stretches.get(i - 1), stretch));
            }
            if (stretch.line().drifts()) {
                faults.add(drift(stretch));
            }
            stretch.aside().forEach(station -> faults.add(loneStation(stretch, station)));
        }
        faults.addAll(new TargetJudge(survey, cove, stretches, evidence).faults());
        return faults.stream()
                .filter(fault -> fault.verdict() == Verdict.BEYOND || fault.verdict() == Verdict.UNSETTLED)
                .sorted(Comparator.comparingDouble(Fault::positionM))
                .toList();
    }

    private Fault atJoint(JudgedJoint judged) {
        List<Placement> both = List.of(judged.joint().before(), judged.joint().after());
        boolean differ = reels.find(both.get(0).reel())
                .flatMap(one -> reels.find(both.get(1).reel()).map(other -> HintTable.labelsDiffer(one, other)))
                .orElse(true);
        return new Fault(FaultKind.JOINT, judged.positionM(), judged.positionM(), judged.positionM(), both,
                judged.difference().orElseThrow(), survey.limits().neighbourSteps(), judged.confidence(),
                judged.verdict(), HintTable.hint(new Pattern(FaultKind.JOINT, differ, false)), judged.settle(),
                judged.budget(), judged.notes());
    }

    private Fault midReel(Stretch before, Stretch after) {
        Comparison comparison = new Comparison(Side.of(before, after.fromM()), Side.of(after, after.fromM()),
                evidence.leftOpen(before.stations(), after.stations()), plane);
        return inside(FaultKind.MID_REEL, after.fromM(), after.begins().fromM(), after.begins().toM(), before, comparison, false);
    }

    private Fault drift(Stretch stretch) {
        Comparison comparison = new Comparison(Drifts.start(stretch), Drifts.end(stretch),
                evidence.leftOpen(ends(stretch, true), ends(stretch, false)), plane);
        return inside(FaultKind.DRIFT, stretch.middleM(), stretch.fromM(), stretch.toM(), stretch, comparison,
                Drifts.darkerAwayFromFeed(stretch, cove.feeds()));
    }

    private static List<Station> ends(Stretch stretch, boolean first) {
        List<Station> stations = stretch.stations();
        return first ? stations.subList(0, 1) : stations.subList(stations.size() - 1, stations.size());
    }

    private Fault loneStation(Stretch stretch, Station station) {
        Comparison comparison = new Comparison(Side.of(stretch, station.positionM()),
                Drifts.alone(stretch, station), evidence.leftOpen(stretch.stations(), List.of(station)), plane);
        return inside(FaultKind.LONE_STATION, station.positionM(), station.positionM(), station.positionM(), stretch,
                comparison, false);
    }

    private SetUp setUp(Stretch stretch) {
        return survey.setUp(stretch.setUp()).orElseThrow();
    }

    private Fault inside(FaultKind kind, double at, double from, double to, Stretch stretch, Comparison comparison,
                         boolean darker) {
        double limit = survey.limits().neighbourSteps();
        Confidence confidence = comparison.confidence(limit);
        Verdict verdict = confidence.at(Rates.forRound(survey.limits(), comparison.rounds()));
        return new Fault(kind, at, from, to, List.of(stretch.placement()), comparison.difference(), limit, confidence,
                verdict, HintTable.hint(new Pattern(kind, false, darker)),
                Settling.of(comparison, verdict, limit, survey.limits().errorRate(), Settle.WhyNot.NEAR_THE_LIMIT),
                Budgets.of(comparison, setUp(stretch), Budget.Part.UNLIKE_REELS, comparison.unlike()), Notes.of(comparison));
    }
}
