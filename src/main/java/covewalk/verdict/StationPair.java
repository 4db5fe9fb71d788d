package covewalk.verdict;

import covewalk.colour.StepPlane;
import covewalk.colour.UvPrime;
import covewalk.survey.Cove;
import covewalk.survey.Limits;
import covewalk.survey.Limits.ErrorPer;
import covewalk.survey.Placement;
import covewalk.survey.Placement.KnownFrom;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two stations of a cove against each other, at once and by themselves: as if a joint lay between them and nothing else
 * had been read. What holds is the noise declared for the set-up, or that of the repeats at the two where there are
 * enough; the scatter along a reel is left out, since it is these two places that are compared and not their reels. The
 * error rate is that of one joint. Nothing is corrected: for what goes into a report, ask {@link Judge}.
 *
 * @param difference from the first station to the second
 */
public record StationPair(Difference difference, Confidence confidence, Verdict verdict) {

    /**
     * Judges the mean of some readings against that of others by the survey's limit between neighbours.
     *
     * @param from readings of one station, each with a colour
     * @param to readings of another one in the same cove
     * @return empty where a side has no readings, or the two were read with different set-ups
     */
    public static Optional<StationPair> of(Survey survey, List<Reading> from, List<Reading> to) {
        if (from.isEmpty() || to.isEmpty() || !from.get(0).setUp().equals(to.get(0).setUp())) {
            return Optional.empty();
        }
        Optional<Cove> cove = survey.cove(to.get(0).cove());
        Optional<SetUp> setUp = survey.setUp(to.get(0).setUp());
        if (cove.isEmpty() || setUp.isEmpty()) {
            return Optional.empty();
        }
        Cove between = new Cove(cove.get().id(), "", 2, false, "", cove.get().heightM(), "", cove.get().target(), List.of(),
                List.of(half(reelAt(cove.get(), from), 0), half(reelAt(cove.get(), to), 1)));
        Survey two = new Survey(survey.site(), survey.visit(), List.of(withoutSmear(setUp.get())), forOneJoint(survey.limits()),
                survey.reels(), List.of(between), Optional.empty());
        List<Reading> readings = new ArrayList<>();
        from.forEach(reading -> readings.add(moved(reading, readings.size(), 0.5)));
        to.forEach(reading -> readings.add(moved(reading, readings.size(), 1.5)));
        JudgedJoint joint = new Judge().judge(two, readings).coves().get(0).joints().get(0);
        return joint.difference().map(difference -> new StationPair(difference, joint.confidence(), joint.verdict()));
    }

    /** The distance of two colours in a cove in steps, by the survey's rule. */
    public static double steps(Survey survey, Cove cove, UvPrime from, UvPrime to) {
        StepPlane plane = Planes.of(survey, cove);
        return plane.steps(to.u() - from.u(), to.v() - from.v());
    }

    private static String reelAt(Cove cove, List<Reading> station) {
        return cove.placementAt(station.get(0).positionM().value()).map(Placement::reel).orElse("");
    }

    private static Placement half(String reel, double fromM) {
        return new Placement(reel, fromM, fromM + 1, KnownFrom.ASSUMED, "");
    }

    /** What a reading mixes near a joint is in both numbers already; here they are compared as they are. */
    private static SetUp withoutSmear(SetUp s) {
        return new SetUp(s.id(), s.meter(), s.serial(), s.calibrationDue(), s.repeatabilityUv(), s.absoluteUv(), s.unlikeUv(),
                s.reads(), 0, s.dimPercent(), s.leastLux(), s.assumed());
    }

    private static Limits forOneJoint(Limits l) {
        return new Limits(l.neighbourSteps(), l.targetSteps(), l.setBy(), l.stepRule(), l.errorRate(), ErrorPer.JOINT);
    }

    private static Reading moved(Reading r, int number, double positionM) {
        return new Reading(Integer.toString(number), r.cove(), new Typed(Double.toString(positionM), positionM), Role.WALK,
                r.setUp(), r.round(), r.colour(), r.lux(), "", "", "", 0);
    }
}
