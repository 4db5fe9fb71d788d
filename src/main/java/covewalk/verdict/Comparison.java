package covewalk.verdict;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.Covariance;
import covewalk.colour.StepPlane;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.LimitTest;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Two sides, what lies between them, and how sure one may be that it is beyond a limit or within it.
 *
 * @param unlike covariance added because the meter may err differently on the two sides; it does not shrink
 */
record Comparison(Side from, Side to, Covariance unlike, StepPlane plane) {

    Difference difference() {
        Covariance steps = plane.carry(covariance());
        return new Difference(from.colour(), to.colour(), covariance(), plane.steps(du(), dv()),
                steps.alongSd(alongFirst(), alongSecond()), change(CctDuv::cctK), change(CctDuv::duv), luxRatio());
    }

    /**
     * Where part of the noise was estimated, its degrees of freedom are those of the estimate, the fewer of both
     * sides, enlarged as far as declared parts make up the rest (Welch-Satterthwaite, GUM G.4.1).
     */
    Confidence confidence(double limitSteps) {
        double length = plane.steps(du(), dv());
        double rounding = reach(from.common()) + reach(to.common());
        Covariance noise = plane.carry(from.shrinking().plus(to.shrinking()).plus(unlike));
        Confidence normal = rounding == 0 ? LimitTest.of(length, noise, limitSteps)
                : new Confidence(LimitTest.of(Math.max(0, length - rounding), noise, limitSteps).beyond(),
                        LimitTest.of(length + rounding, noise, limitSteps).within());
        return LimitTest.widened(normal, degrees());
    }

    /**
     * How far coarse digits may lie from the truth at most, steps. They do not vary like noise: typed again they are
     * the same again, so the worst they may hide is counted, and equal digits are no proof of equal colours. A uniform
     * number reaches the root of 3 times its standard deviation; two of them together at most the root of 2 times more.
     */
    private double reach(Covariance digits) {
        Covariance steps = plane.carry(digits);
        return Math.sqrt(6 * (steps.uu() + steps.vv()));
    }

    double degrees() {
        double all = along(covariance());
        double estimated = along(from.shrinking().plus(to.shrinking()));
        double share = all > 0 ? estimated / all : 0;
        return share > 0 ? Math.min(from.degrees(), to.degrees()) / (share * share) : Double.POSITIVE_INFINITY;
    }

    int rounds() {
        return Math.max(from.round(), to.round());
    }

    Covariance covariance() {
        return from.shrinking().plus(to.shrinking()).plus(staying());
    }

    /** What more readings do not make smaller. */
    Covariance staying() {
        return from.common().plus(to.common()).plus(unlike);
    }

    /** Variance in steps squared along the difference. */
    double along(Covariance uvPrime) {
        double sd = plane.carry(uvPrime).alongSd(alongFirst(), alongSecond());
        return sd * sd;
    }

    private double du() {
        return to.colour().u() - from.colour().u();
    }

    private double dv() {
        return to.colour().v() - from.colour().v();
    }

    private double alongFirst() {
        return plane.fromUvPrime().first(du(), dv());
    }

    private double alongSecond() {
        return plane.fromUvPrime().second(du(), dv());
    }

    private OptionalDouble change(ToDoubleFunction<CctDuv> of) {
        if (ColourTemperature.of(from.colour()) instanceof CctDuv one
                && ColourTemperature.of(to.colour()) instanceof CctDuv other) {
            return OptionalDouble.of(of.applyAsDouble(other) - of.applyAsDouble(one));
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble luxRatio() {
        boolean both = from.lux().isPresent() && to.lux().isPresent() && from.lux().getAsDouble() > 0;
        return both ? OptionalDouble.of(to.lux().getAsDouble() / from.lux().getAsDouble()) : OptionalDouble.empty();
    }
}
