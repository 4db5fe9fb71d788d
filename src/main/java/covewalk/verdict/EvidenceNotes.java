package covewalk.verdict;

import covewalk.colour.Towards;
import covewalk.colour.UvPrime;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.verdict.evidence.Evidence;
import covewalk.verdict.evidence.ReferenceSpot;
import covewalk.verdict.evidence.SetUpTally;
import covewalk.verdict.stretch.Repeatability;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What weakens the evidence of a whole survey, and what of it was corrected. */
final class EvidenceNotes {

    private final Survey survey;
    private final Evidence evidence;
    private final boolean correctionAsked;
    private final List<Note> notes = new ArrayList<>();

    EvidenceNotes(Survey survey, Evidence evidence, boolean correctionAsked) {
        this.survey = survey;
        this.evidence = evidence;
        this.correctionAsked = correctionAsked;
    }

    List<Note> of(List<CoveJudgement> coves) {
        notes.clear();
        if (survey.visit().minutesOn().isEmpty()) {
            notes.add(Note.of(Note.Kind.WARM_UP_UNKNOWN));
        }
        for (SetUpTally tally : evidence.tallies()) {
            drift(tally);
            dark(tally);
            SetUp setUp = survey.setUp(tally.setUp()).orElseThrow();
            if (tally.belowRange() > 0) {
                notes.add(Note.of(Note.Kind.BELOW_RANGE, setUp.id(), tally.belowRange(), setUp.leastLux().orElseThrow()));
            }
            repeatability(setUp, coves);
        }
        coves.stream().filter(cove -> cove.stations().stream().map(Station::setUp).distinct().count() > 1)
                .forEach(cove -> notes.add(Note.of(Note.Kind.SEVERAL_SETUPS, cove.cove().id())));
        return List.copyOf(notes);
    }

    private void drift(SetUpTally tally) {
        List<ReferenceSpot> spots = evidence.spots().stream().filter(spot -> spot.spot().setUp().equals(tally.setUp())).toList();
        spots.stream().filter(ReferenceSpot::drifts).map(EvidenceNotes::found).forEach(notes::add);
        if (spots.stream().noneMatch(ReferenceSpot::drifts) && spots.stream().noneMatch(ReferenceSpot::tells)) {
            notes.add(Note.of(Note.Kind.DRIFT_NOT_SEEN, tally.setUp()));
        }
        Optional<ReferenceSpot> by = evidence.correctedBy(tally.setUp());
        by.ifPresent(spot -> notes.add(corrected(tally, spot)));
        if (!correctionAsked && spots.stream().anyMatch(spot -> spot.drifts() && spot.timed())) {
            notes.add(Note.of(Note.Kind.DRIFT_CORRECTABLE, tally.setUp()));
        }
        if (correctionAsked && by.isEmpty()) {
            notes.add(Note.of(Note.Kind.DRIFT_NOT_CORRECTED, tally.setUp()));
        }
    }

    private static Note found(ReferenceSpot spot) {
        UvPrime start = new UvPrime(spot.middle().u() - spot.du() / 2, spot.middle().v() - spot.dv() / 2);
        Towards towards = Towards.from(start, start.plus(spot.du(), spot.dv()));
        return spot.timed()
                ? Note.of(Note.Kind.REFERENCE_DRIFT, spot.spot().setUp(), spot.spot().cove(), metres(spot), steps(spot),
                        whole(spot.lasted()), towards.words())
                : Note.of(Note.Kind.REFERENCE_DRIFT_BY_ORDER, spot.spot().setUp(), spot.spot().cove(), metres(spot), steps(spot),
                        towards.words());
    }

    private static Note corrected(SetUpTally tally, ReferenceSpot spot) {
        double uncertainty = spot.uncertainty(spot.lasted()).alongSd(spot.du(), spot.dv()) / UvPrime.STEP;
        return Note.of(Note.Kind.DRIFT_CORRECTED, tally.setUp(), tally.inTime(), steps(spot), whole(spot.lasted()),
                twoDecimals(uncertainty), tally.withoutTime());
    }

    private void dark(SetUpTally tally) {
        if (tally.foreign() > 0) {
            notes.add(Note.of(Note.Kind.DARK_SUBTRACTED, tally.setUp(), tally.foreign(), twoDecimals(tally.largestShare() * 100)));
        }
        if (tally.swamped() > 0) {
            notes.add(Note.of(Note.Kind.DARK_SWAMPS, tally.setUp(), tally.swamped()));
        }
        if (tally.withoutLux() > 0) {
            notes.add(Note.of(Note.Kind.DARK_WITHOUT_LUX, tally.setUp(), tally.withoutLux()));
        }
    }

    private void repeatability(SetUp setUp, List<CoveJudgement> coves) {
        coves.stream().flatMap(cove -> cove.stretches().stream()).filter(stretch -> stretch.setUp().equals(setUp.id()))
                .findFirst().map(Stretch::noise).ifPresent(noise -> {
                    Repeatability found = noise.repeatability();
                    if (found.against() == Repeatability.Against.NOISIER || found.against() == Repeatability.Against.QUIETER) {
                        notes.add(Note.of(found.against() == Repeatability.Against.NOISIER ? Note.Kind.NOISIER_THAN_DECLARED
                                : Note.Kind.QUIETER_THAN_DECLARED, setUp.id(), twoDecimals(found.repeats().uv() / UvPrime.STEP),
                                twoDecimals(setUp.repeatabilityUv() / UvPrime.STEP)));
                    }
                });
    }

    private static String steps(ReferenceSpot spot) {
        return twoDecimals(Math.hypot(spot.du(), spot.dv()) / UvPrime.STEP);
    }

    private static String metres(ReferenceSpot spot) {
        return twoDecimals(spot.spot().positionM());
    }

    private static String whole(double number) {
        return String.format(Locale.ROOT, "%.0f", number);
    }

    private static String twoDecimals(double number) {
        return String.format(Locale.ROOT, "%.2f", number);
    }
}
