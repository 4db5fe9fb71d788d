package covewalk.verdict;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.Covariance;
import covewalk.colour.StepPlane;
import covewalk.verdict.limit.Confidence;
import covewalk.verdict.limit.DirectionTest;
import covewalk.verdict.limit.LimitTest;
import covewalk.verdict.limit.Rounding;
import covewalk.verdict.limit.Spread;
import covewalk.verdict.stretch.Parts;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Two sides, what lies between them, and how sure one may be that it is beyond a limit or within it.
 *
 * @param unlike covariance added because the meter may err differently on the two sides; it does not shrink
 */
record Comparison(Side from, Side to, Covariance unlike, StepPlane plane) {

    /** With the limit fewer standard uncertainties long than this, readings are not said to show that anything is within it. */
    private static final double FEWEST_UNCERTAINTIES = 2;

    Difference difference() {
        Optional<CctDuv> one = temperature(from);
        Optional<CctDuv> other = temperature(to);
        return new Difference(from.colour(), to.colour(), covariance(), steps(), standardUncertaintySteps(),
                change(one, other, CctDuv::cctK), change(one, other, CctDuv::duv), luxRatio());
    }

    double steps() {
        return plane.steps(du(), dv());
    }

    private double standardUncertaintySteps() {
        return plane.carry(covariance()).alongSd(alongFirst(), alongSecond());
    }

    /**
     * The less sure of two: with the repeatability and digits as stated, and with the noise as the readings themselves
     * show it, by Student's t. So it is honest where the meter is as declared, and where it is worse and the strip
     * scatters, as long as the readings are enough to show it.
     */
    Confidence confidence(double limitSteps) {
        Confidence found = Double.isInfinite(degreesFound()) ? asStated(limitSteps)
                : asStated(limitSteps).and(asFound(limitSteps));
        boolean tooCoarse = FEWEST_UNCERTAINTIES * standardUncertaintySteps() > limitSteps;
        return tooCoarse ? new Confidence(found.beyond(), 0) : found;
    }

    private Confidence asStated(double limitSteps) {
        Covariance noise = plane.carry(both(Parts::stated).plus(known()));
        double length = steps();
        Rounding rounding = rounding();
        if (rounding.none()) {
            return LimitTest.of(length, noise, limitSteps);
        }
        Spread spread = new Spread(Covariance.ZERO, Double.POSITIVE_INFINITY, noise, rounding);
        return DirectionTest.of(alongFirst(), alongSecond(), spread, limitSteps);
    }

    private Confidence asFound(double limitSteps) {
        return DirectionTest.of(alongFirst(), alongSecond(), found(), limitSteps);
    }

    private Spread found() {
        return new Spread(plane.carry(both(Parts::found)), degreesFound(), plane.carry(known()), rounding());
    }

    /** Neither declared for a reading nor estimated from their scatter. */
    private Covariance known() {
        return unlike.plus(from.doubt()).plus(to.doubt());
    }

    private Rounding rounding() {
        return new Rounding(plane.carry(from.common()), plane.carry(to.common()));
    }

    private Covariance both(Function<Parts, Covariance> part) {
        return part.apply(from.parts().plus(from.slope())).plus(part.apply(to.parts().plus(to.slope())));
    }

    /** How far coarse digits may put the difference off, steps along it. */
    double roundingReach() {
        return rounding().reach(alongFirst(), alongSecond());
    }

    double degreesFound() {
        return Math.min(from.degrees(), to.degrees());
    }

    /** Degrees of freedom of the whole along the difference; infinite where the readings show none of it. */
    double degrees() {
        return Double.isInfinite(degreesFound()) ? Double.POSITIVE_INFINITY : found().degrees(alongFirst(), alongSecond());
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

    /** Variance in steps squared along the direction in which it is largest. */
    double largest(Covariance uvPrime) {
        double sd = plane.carry(uvPrime).eigen().larger();
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

    private static Optional<CctDuv> temperature(Side side) {
        return ColourTemperature.of(side.colour()) instanceof CctDuv white ? Optional.of(white) : Optional.empty();
    }

    private static OptionalDouble change(Optional<CctDuv> from, Optional<CctDuv> to, ToDoubleFunction<CctDuv> of) {
        return from.isPresent() && to.isPresent()
                ? OptionalDouble.of(of.applyAsDouble(to.get()) - of.applyAsDouble(from.get())) : OptionalDouble.empty();
    }

    OptionalDouble luxRatio() {
        boolean both = from.lux().isPresent() && to.lux().isPresent() && from.lux().getAsDouble() > 0;
        return both ? OptionalDouble.of(to.lux().getAsDouble() / from.lux().getAsDouble()) : OptionalDouble.empty();
    }
}
