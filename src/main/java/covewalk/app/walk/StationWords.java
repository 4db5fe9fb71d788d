package covewalk.app.walk;

import covewalk.app.text.LengthWords;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Joint;
import covewalk.survey.Placement;
import covewalk.survey.SetUp;
import java.util.Optional;

/** A station in words: "Cove C2, 6.5 m, in reel R7, 0.5 m past the joint". */
final class StationWords {

    /** Nearer than this is at the joint, m. */
    private static final double AT_M = 0.005;

    private record Edge(double positionM, boolean before) {
    }

    private final Texts texts;
    private final LengthWords lengths;

    StationWords(Texts texts, LengthWords lengths) {
        this.texts = texts;
        this.lengths = lengths;
    }

    String of(Cove cove, double positionM) {
        String at = texts.get("station.cove", cove.id(), lengths.brief(positionM));
        if (cove.placements().isEmpty()) {
            return at;
        }
        return cove.placementAt(positionM).map(placement -> texts.get("station.in", at, placement.reel()) + joint(cove, placement, positionM))
                .orElseGet(() -> texts.get("station.gap", at));
    }

    private String joint(Cove cove, Placement placement, double positionM) {
        return nearest(cove, placement, positionM).map(edge -> {
            double away = Math.abs(positionM - edge.positionM());
            if (away < AT_M) {
                return texts.get("station.at-joint");
            }
            return edge.before() ? texts.get("station.past", lengths.brief(away)) : texts.get("station.ahead", lengths.brief(away));
        }).orElse("");
    }

    /** What keeps a reading there from counting for a joint; empty where nothing does. */
    String tooNear(Cove cove, double positionM, SetUp setUp) {
        boolean near = cove.placementAt(positionM).flatMap(placement -> nearest(cove, placement, positionM))
                .filter(edge -> Math.abs(positionM - edge.positionM()) <= 2 * setUp.smearM()).isPresent();
        return near ? texts.get("station.too-near", lengths.brief(2 * setUp.smearM())) : "";
    }

    /** The nearer end of the placement that is a joint. */
    private static Optional<Edge> nearest(Cove cove, Placement placement, double positionM) {
        boolean start = cove.joints().stream().map(Joint::after).anyMatch(placement::equals);
        boolean end = cove.joints().stream().map(Joint::before).anyMatch(placement::equals);
        boolean nearerToStart = positionM - placement.fromM() <= placement.toM() - positionM;
        if (start && (nearerToStart || !end)) {
            return Optional.of(new Edge(placement.fromM(), true));
        }
        return end ? Optional.of(new Edge(placement.toM(), false)) : Optional.empty();
    }
}
