package covewalk.verdict;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.verdict.stretch.Ending;
import covewalk.verdict.stretch.Line;
import covewalk.verdict.stretch.Parts;
import covewalk.verdict.stretch.Stretch;
import java.util.OptionalDouble;

/**
 * One side of a difference: a colour and how well it is known, all in u', v'.
 *
 * @param parts of the uncertainty that further readings make smaller
 * @param slope likewise what the slope of a line leaves open, carried on from the middle of the readings
 * @param doubt whether there is a slope
 * @param common the part that stays, however many readings there are
 * @param oneMore covariance of one further reading
 * @param degrees of freedom with which the readings themselves show the noise; infinite where they do not
 * @param repeatabilityMeasured whether the repeatability was taken from repeats, and not as declared
 * @param atEnd whether it is the colour at an end of a reel, which a slope puts off
 * @param stations how many it rests on; 0 for a target
 * @param readings likewise
 */
record Side(UvPrime colour, Parts parts, Parts slope, Covariance doubt, Covariance common, Covariance oneMore,
            double degrees, boolean repeatabilityMeasured, boolean atEnd, int stations, int readings, int round, OptionalDouble lux) {

    /** The colour of a stretch at a position, along the line that was found for it. */
    static Side of(Stretch stretch, double positionM) {
        return of(stretch, stretch.line(), Covariance.ZERO, false, positionM);
    }

    /** The colour of a stretch at one of its ends, whatever drift may be in it. */
    static Side atEnd(Stretch stretch, double positionM) {
        Ending ending = stretch.ending();
        return of(stretch, ending.line(), ending.doubtAt(positionM), true, positionM);
    }

    private static Side of(Stretch stretch, Line line, Covariance doubt, boolean atEnd, double positionM) {
        return new Side(line.at(positionM), line.centreParts(), line.slopePartsAt(positionM), doubt, line.common(),
                stretch.noise().ofOneReading(), stretch.noise().degrees(), stretch.noise().repeatability().measured(), atEnd,
                stretch.stations().size(), stretch.readings(), stretch.round(), Lux.at(stretch, positionM));
    }

    /** A colour that somebody stated: it has no noise of its own. */
    static Side stated(UvPrime colour) {
        return new Side(colour, Parts.NONE, Parts.NONE, Covariance.ZERO, Covariance.ZERO, Covariance.ZERO, Double.POSITIVE_INFINITY, false, false, 0, 0,
                1, OptionalDouble.empty());
    }

    /** Another colour, known otherwise, from the same readings. */
    Side as(UvPrime other, Parts itsParts, Parts itsSlope, Covariance itsCommon) {
        return new Side(other, itsParts, itsSlope, Covariance.ZERO, itsCommon, oneMore, degrees, repeatabilityMeasured, atEnd, stations, readings, round,
                lux);
    }

    Covariance shrinking() {
        return parts.plus(slope).sum().plus(doubt);
    }
}
