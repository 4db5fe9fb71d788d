package covewalk.verdict.stretch;

import covewalk.colour.Covariance;
import covewalk.colour.UvPrime;
import covewalk.survey.Reading;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A position along a cove where readings were taken with one set-up.
 *
 * @param positionM from the cove's datum, m
 * @param readings one or more, in the order of the log
 * @param mean of their colours in u', v'
 * @param digits what the digits typed leave open of one reading (the mean over the readings), in u', v'
 * @param lux mean of the readings that have one, lx, as typed
 * @param colours by which the readings are judged: {@code mean} is the mean of these
 */
public record Station(String setUp, double positionM, List<Reading> readings, UvPrime mean, Covariance digits,
                      OptionalDouble lux, ColourOf colours) {

    public Station {
        readings = List.copyOf(readings);
    }

    /** A station whose readings are judged as typed. */
    public Station(String setUp, double positionM, List<Reading> readings, UvPrime mean, Covariance digits,
                   OptionalDouble lux) {
        this(setUp, positionM, readings, mean, digits, lux, ColourOf.AS_TYPED);
    }

    /** The highest round among its readings. */
    public int round() {
        int round = 1;
        for (Reading reading : readings) { // no stream: asked for every station of a large survey, several times
            round = Math.max(round, reading.round());
        }
        return round;
    }
}
