package covewalk.verdict.evidence;

import covewalk.survey.Reading;

/** A place read with one set-up. */
public record Spot(String setUp, String cove, double positionM) {

    static Spot of(Reading reading) {
        return new Spot(reading.setUp(), reading.cove(), reading.positionM().value());
    }
}
