package covewalk.verdict.claim;

import covewalk.colour.Covariance;
import covewalk.colour.StepPlane;
import covewalk.survey.Limits;
import covewalk.survey.Reel;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.LimitTest;
import covewalk.verdict.limit.Verdict;
import java.util.Optional;

/** Checks the colour of one reel against the claim on its label. */
final class ClaimCheck {

    private final Limits limits;
    private final Reel reel;
    private final ClaimCentre centre;
    private final ReelColour read;
    private final StepPlane plane;
    private final double du;
    private final double dv;

    ClaimCheck(Limits limits, Reel reel, ClaimCentre centre, ReelColour read) {
        this.limits = limits;
        this.reel = reel;
        this.centre = centre;
        this.read = read;
        this.plane = centre.plane(limits.stepRule());
        this.du = read.colour().u() - centre.colour().u();
        this.dv = read.colour().v() - centre.colour().v();
    }

    ReelClaim judged() {
        Covariance steps = plane.carry(read.covariance());
        double sd = steps.alongSd(plane.fromUvPrime().first(du, dv), plane.fromUvPrime().second(du, dv));
        Confidence confidence = confidence(read.covariance(), read.wholeDegrees());
        ClaimVerdict verdict = verdict(confidence);
        return new ReelClaim(reel, Optional.of(centre),
                Optional.of(new ReelClaim.Measured(read.setUp().id(), read.colour(), plane.steps(du, dv), sd, read.varies())),
                confidence, verdict, why(verdict), inQuadrangle());
    }

    private Confidence confidence(Covariance uvPrime, double degrees) {
        Confidence normal = LimitTest.of(plane.steps(du, dv), plane.carry(uvPrime), reel.claimedSteps().orElseThrow());
        return LimitTest.widened(normal, degrees);
    }

    /** What paint has tinted settles nothing about the strip. */
    private ClaimVerdict verdict(Confidence confidence) {
        return read.direct() ? ClaimVerdict.of(confidence.at(read.rate(limits.errorRate()))) : ClaimVerdict.UNSETTLED;
    }

    private WhyOpen why(ClaimVerdict verdict) {
        if (verdict != ClaimVerdict.UNSETTLED) {
            return WhyOpen.NONE;
        }
        if (!read.direct()) {
            return WhyOpen.NOT_DIRECT;
        }
        Verdict withoutMeter = confidence(read.shrinking(), read.degrees()).at(read.rate(limits.errorRate()));
        return withoutMeter == Verdict.UNSETTLED ? WhyOpen.NEAR_THE_EDGE : WhyOpen.METER_ERROR;
    }

    private ClaimVerdict inQuadrangle() {
        return ClaimCentre.nominal(reel).map(nominal -> verdict(Quadrangle.of(nominal, read.colour().toXy(),
                read.colour().jacobianToXy().carry(read.covariance()), read.wholeDegrees()))).orElse(ClaimVerdict.NOT_READ);
    }
}
