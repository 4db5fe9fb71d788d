package covewalk.app.site;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a placement begins or ends; where two touch, the joint is both, and they move together.
 *
 * @param before the placement that ends there, from 0; -1 where none does
 * @param after the placement that begins there; -1 where none does
 */
record Boundary(int before, int after, double atM) {

    /** Ends measured to the millimetre touch although they seem apart by one. */
    private static final double TOUCH_M = 0.0015;
    /** No placement is made shorter than this by dragging. */
    private static final double SHORTEST_M = 0.01;

    static List<Boundary> of(Cove cove) {
        List<Boundary> all = new ArrayList<>();
        List<Placement> row = cove.placements();
        for (int i = 0; i < row.size(); i++) {
            boolean joined = i > 0 && Math.abs(row.get(i).fromM() - row.get(i - 1).toM()) < TOUCH_M;
            if (!joined) {
                all.add(new Boundary(-1, i, row.get(i).fromM()));
            }
            boolean touches = i + 1 < row.size() && Math.abs(row.get(i + 1).fromM() - row.get(i).toM()) < TOUCH_M;
            all.add(new Boundary(i, touches ? i + 1 : -1, row.get(i).toM()));
        }
        return all;
    }

    /** The nearest one to a place, if it is near enough; of two as near, the joint. */
    static Optional<Boundary> near(Cove cove, double atM, double withinM) {
        return of(cove).stream().filter(boundary -> Math.abs(boundary.atM - atM) <= withinM)
                .min(Comparator.comparingDouble((Boundary boundary) -> Math.abs(boundary.atM - atM))
                        .thenComparing(boundary -> !boundary.isJoint()));
    }

    boolean isJoint() {
        return before >= 0 && after >= 0;
    }

    /** As near to {@code toM} as its neighbours and the ends of the cove let it. */
    double reach(Cove cove, double toM) {
        List<Placement> row = cove.placements();
        double least = before >= 0 ? row.get(before).fromM() + SHORTEST_M : after > 0 ? row.get(after - 1).toM() : 0;
        double most = after >= 0 ? row.get(after).toM() - SHORTEST_M
                : before + 1 < row.size() ? row.get(before + 1).fromM() : cove.lengthM();
        return Math.max(least, Math.min(most, toM));
    }

    /** The cove with this boundary at another place. */
    Cove moved(Cove cove, double toM) {
        double to = reach(cove, toM);
        List<Placement> row = new ArrayList<>(cove.placements());
        if (before >= 0) {
            row.set(before, with(row.get(before), row.get(before).fromM(), to));
        }
        if (after >= 0) {
            row.set(after, with(row.get(after), to, row.get(after).toM()));
        }
        return cove.withPlacements(row);
    }

    private static Placement with(Placement placement, double fromM, double toM) {
        return new Placement(placement.reel(), fromM, toM, placement.knownFrom(), placement.installed());
    }
}
