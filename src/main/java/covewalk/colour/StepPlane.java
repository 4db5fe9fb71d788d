package covewalk.colour;

/**
 * A linear map from differences in u'v' to a plane in which one step, in any direction, has length 1.
 *
 * @param rule the rule that it counts by
 * @param name which circle or ellipse, for people to read
 * @param fromUvPrime steps per unit of u' and of v'
 */
public record StepPlane(StepRule rule, String name, Jacobian fromUvPrime) {

    private static final StepPlane CIRCLE = new StepPlane(StepRule.UV_CIRCLE, "u'v' circle 0.0011",
            new Jacobian(1 / UvPrime.STEP, 0, 0, 1 / UvPrime.STEP));

    /** The plane of {@link StepRule#UV_CIRCLE}, the same for all colours. */
    public static StepPlane circle() {
        return CIRCLE;
    }

    /** The plane of {@link StepRule#ELLIPSE} about a standard colour, linear from u'v' to x,y at that colour. */
    public static StepPlane ellipse(SdcmEllipse ellipse) {
        Jacobian toXy = ellipse.centre().toUvPrime().jacobianToXy();
        return new StepPlane(StepRule.ELLIPSE, ellipse.colour(), ellipse.toStepPlane().times(toXy));
    }

    /** The plane of a rule for colours about {@code cctK} (which the circle does not depend on). */
    public static StepPlane of(StepRule rule, double cctK) {
        return rule == StepRule.ELLIPSE ? ellipse(SdcmEllipse.nearest(cctK)) : circle();
    }

    /** The length of a difference in u'v', in steps. */
    public double steps(double du, double dv) {
        return Math.hypot(fromUvPrime.first(du, dv), fromUvPrime.second(du, dv));
    }

    /** An uncertainty in u'v' as one in this plane, in steps squared. */
    public Covariance carry(Covariance uvPrime) {
        return fromUvPrime.carry(uvPrime);
    }
}
