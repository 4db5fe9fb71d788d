package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.verdict.stretch.Line;
import covewalk.verdict.stretch.Station;
import covewalk.verdict.stretch.Stretch;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One side of a comparison: a colour and what is known of its uncertainty.
 *
 * @param shrinking the part of its covariance that more readings make smaller
 * @param common the part that stays, however many readings there are
 * @param oneMore covariance of one further reading
 * @param degrees of freedom with which the scatter in {@code shrinking} was estimated
 * @param scatter the share of {@code shrinking} that was estimated, 0 to 1
 * @param readings how many it rests on; 0 for a target
 */
record Side(UvPrime colour, Covariance shrinking, Covariance common, Covariance oneMore, double degrees, double scatter,
            int readings, int round, OptionalDouble lux) {

    /** The colour of a stretch at a position, along its line. */
    static Side of(Stretch stretch, double positionM) {
        Line line = stretch.line();
        double declared = variance(stretch.noise().repeatability());
        double estimated = variance(stretch.noise().scatter());
        return new Side(line.at(positionM), line.shrinkingAt(positionM), line.common(),
                stretch.noise().ofOneReading(), stretch.noise().degrees(),
                estimated > 0 ? estimated / (estimated + declared) : 0, stretch.readings(), stretch.round(),
                lux(stretch.stations()));
    }

    /** A colour that somebody stated: it has no noise of its own. */
    static Side stated(UvPrime colour) {
        return new Side(colour, Covariance.ZERO, Covariance.ZERO, Covariance.ZERO, Double.POSITIVE_INFINITY, 0, 0, 1,
                OptionalDouble.empty());
    }

    Side with(OptionalDouble otherLux) {
        return new Side(colour, shrinking, common, oneMore, degrees, scatter, readings, round, otherLux);
    }

    static OptionalDouble lux(List<Station> stations) {
        return stations.stream().map(Station::lux).filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble).average();
    }

    private static double variance(Covariance c) {
        return c.uu() + c.vv();
    }
}
