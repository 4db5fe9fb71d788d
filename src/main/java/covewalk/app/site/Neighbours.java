package covewalk.app.site;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import java.util.ArrayList;
import java.util.List;

/**
 * What happens beside a placement whose end was typed: where it grows into a neighbour that reaches farther, the neighbour
 * gives way, as when a joint is moved. Where it shrinks, a gap is left, which may be meant.
 */
final class Neighbours {

    private Neighbours() {
    }

    /** @param now the cove's placements, perhaps with one of them changed */
    static Cove giveWay(Cove cove, List<Placement> now) {
        List<Placement> before = cove.placements();
        List<Placement> row = new ArrayList<>(now);
        for (int i = 0; i < row.size() && row.size() == before.size(); i++) {
            Placement changed = row.get(i);
            if (!changed.equals(before.get(i))) {
                giveWay(row, i, changed);
            }
        }
        return cove.withPlacements(row);
    }

    private static void giveWay(List<Placement> row, int i, Placement changed) {
        if (i + 1 < row.size() && changed.toM() > row.get(i + 1).fromM() && changed.toM() < row.get(i + 1).toM()) {
            row.set(i + 1, between(row.get(i + 1), changed.toM(), row.get(i + 1).toM()));
        }
        if (i > 0 && changed.fromM() < row.get(i - 1).toM() && changed.fromM() > row.get(i - 1).fromM()) {
            row.set(i - 1, between(row.get(i - 1), row.get(i - 1).fromM(), changed.fromM()));
        }
    }

    private static Placement between(Placement placement, double fromM, double toM) {
        return new Placement(placement.reel(), fromM, toM, placement.knownFrom(), placement.installed());
    }
}
