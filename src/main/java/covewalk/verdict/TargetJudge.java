package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.HintTable.Pattern;
import covewalk.verdict.evidence.Evidence;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import covewalk.verdict.stretch.Stretch;
import java.util.ArrayList;
import java.util.List;

/** Judges the stretches of each placement against the cove's target, where both it and a limit were set. */
final class TargetJudge {

    private final Survey survey;
    private final Cove cove;
    private final List<Stretch> stretches;
    private final Evidence evidence;

    TargetJudge(Survey survey, Cove cove, List<Stretch> stretches, Evidence evidence) {
        this.evidence = evidence;
        this.survey = survey;
        this.cove = cove;
        this.stretches = stretches;
    }

    /** One for each placement and set-up: its longest stretch speaks for it; a change inside it is told elsewhere. */
    List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        if (cove.target().isEmpty() || survey.limits().targetSteps().isEmpty()) {
            return faults;
        }
        for (SetUp setUp : survey.setUps()) {
            for (Placement placement : cove.placements()) {
                stretches.stream()
                        .filter(stretch -> stretch.placement() == placement && stretch.setUp().equals(setUp.id()))
                        .max((one, other) -> Double.compare(one.lengthM(), other.lengthM()))
                        .ifPresent(stretch -> faults.add(judge(stretch, setUp)));
            }
        }
        return faults;
    }

    private Fault judge(Stretch stretch, SetUp setUp) {
        double limit = survey.limits().targetSteps().orElseThrow();
        Placement placement = stretch.placement();
        double middle = stretch.line().centreM();
        Covariance drift = evidence.leftOpen(stretch.stations());
        Comparison comparison = new Comparison(Side.stated(cove.target().orElseThrow().toUvPrime()),
                Side.of(stretch, middle), Covariance.isotropic(setUp.absoluteUv()).plus(drift), Planes.of(survey, cove));
        Confidence confidence = comparison.confidence(limit);
        Verdict verdict = confidence.at(Rates.forRound(survey.limits(), comparison.rounds()));
        return new Fault(FaultKind.OFF_TARGET, (placement.fromM() + placement.toM()) / 2, placement.fromM(),
                placement.toM(), List.of(placement), comparison.difference(), limit, confidence, verdict,
                HintTable.hint(new Pattern(FaultKind.OFF_TARGET, false, false)),
                Settling.of(comparison, verdict, limit, survey.limits().errorRate(), Settle.WhyNot.METER_ERROR),
                Budgets.of(comparison, setUp, Budget.Part.METER, drift), Notes.of(comparison));
    }
}
