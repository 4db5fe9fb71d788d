package covewalk.report.punch;

import covewalk.survey.Cove;
import java.util.List;

/**
 * Where somebody climbs once for one or more items.
 *
 * @param number from 1, in walking order
 * @param positionM the place to stand at, m from the datum
 * @param items within reach of it, by their numbers
 */
public record LadderStop(int number, Cove cove, double positionM, List<PunchItem> items) {

    public LadderStop {
        items = List.copyOf(items);
    }
}
