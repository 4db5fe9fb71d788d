package covewalk.app.site;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.Placement.KnownFrom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reels put into a cove where nothing lies yet, or cut into what lies there. */
final class NewPlacement {

    /** The length of a reel that says none (common practice, no source). */
    static final double USUAL_M = 5;

    private NewPlacement() {
    }

    /** Where the next reel begins: at the end of the last one. */
    static double nextM(Cove cove) {
        return cove.placements().stream().mapToDouble(Placement::toM).max().orElse(0);
    }

    static boolean isFull(Cove cove) {
        return nextM(cove) >= cove.lengthM();
    }

    /** The cove with one more placement behind the last one. */
    static Cove behindTheLast(Cove cove, String reel, double toM, KnownFrom known) {
        return with(cove, new Placement(reel, nextM(cove), toM, known, ""));
    }

    /**
     * The cove with one more joint: what lies there is cut, and the reel takes its far part; where nothing lies, the reel
     * reaches from what lies before up to there.
     *
     * @return empty where there is no room: at the very end of a placement
     */
    static Optional<Cove> jointAt(Cove cove, double atM, String reel) {
        Optional<Placement> there = cove.placements().stream().filter(placement -> placement.covers(atM)).findFirst();
        if (there.isPresent()) {
            Placement cut = there.get();
            return atM <= cut.fromM() || atM >= cut.toM() ? Optional.empty() : Optional.of(cut(cove, cut, atM, reel));
        }
        double from = cove.placements().stream().mapToDouble(Placement::toM).filter(end -> end < atM).max().orElse(0);
        return atM > from ? Optional.of(with(cove, new Placement(reel, from, atM, KnownFrom.ASSUMED, ""))) : Optional.empty();
    }

    private static Cove cut(Cove cove, Placement cut, double atM, String reel) {
        List<Placement> row = new ArrayList<>(cove.placements());
        row.remove(cut);
        row.add(new Placement(cut.reel(), cut.fromM(), atM, cut.knownFrom(), cut.installed()));
        row.add(new Placement(reel, atM, cut.toM(), KnownFrom.ASSUMED, ""));
        return cove.withPlacements(row);
    }

    private static Cove with(Cove cove, Placement placement) {
        List<Placement> row = new ArrayList<>(cove.placements());
        row.add(placement);
        return cove.withPlacements(row);
    }
}
