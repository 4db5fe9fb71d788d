package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.verdict.stretch.Line;
import covewalk.verdict.stretch.Parts;
import covewalk.verdict.stretch.Stretch;
import java.util.OptionalDouble;

/**
 * One side of a comparison: a colour and what is known of its uncertainty.
 *
 * @param parts of its uncertainty that more readings make smaller
 * @param common the part that stays, however many readings there are
 * @param oneMore covariance of one further reading
 * @param degrees of freedom with which {@code parts} were estimated; infinite where they were declared
 * @param repeatabilityMeasured whether the repeatability was taken from repeats, and not as declared
 * @param readings how many it rests on; 0 for a target
 */
record Side(UvPrime colour, Parts parts, Covariance common, Covariance oneMore, double degrees,
            boolean repeatabilityMeasured, int readings, int round, OptionalDouble lux) {

    /** The colour of a stretch at a position, along its line. */
    static Side of(Stretch stretch, double positionM) {
        Line line = stretch.line();
        return new Side(line.at(positionM), line.shrinkingAt(positionM), line.common(),
                stretch.noise().ofOneReading(), stretch.noise().degrees(), stretch.noise().repeatability().measured(), stretch.readings(), stretch.round(), Lux.at(stretch, positionM));
    }

    /** A colour that somebody stated: it has no noise of its own. */
    static Side stated(UvPrime colour) {
        return new Side(colour, Parts.NONE, Covariance.ZERO, Covariance.ZERO, Double.POSITIVE_INFINITY, false, 0, 1,
                OptionalDouble.empty());
    }

    Covariance shrinking() {
        return parts.sum();
    }
}
