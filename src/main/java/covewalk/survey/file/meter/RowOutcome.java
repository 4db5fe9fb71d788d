package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import java.util.Optional;

/**
 * What became of a row: a reading, or the reason why it is none.
 *
 * @param row the row itself
 * @param reading present where the row was read; its id is not the log's yet
 * @param refusal present where it was not
 */
record RowOutcome(MeterRow row, Optional<Reading> reading, Optional<Problem> refusal) {

    static RowOutcome kept(MeterRow row, Reading reading) {
        return new RowOutcome(row, Optional.of(reading), Optional.empty());
    }

    static RowOutcome setAside(MeterRow row, Problem why) {
        return new RowOutcome(row, Optional.empty(), Optional.of(why));
    }
}
