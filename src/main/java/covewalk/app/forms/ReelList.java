package covewalk.app.forms;

import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The reels of a survey. Where one gets another name, its placements follow. */
public final class ReelList {

    private ReelList() {
    }

    public static Items<Reel> of(Description description) {
        return new Items<>(description, () -> "reels", Survey::reels, ReelList::put);
    }

    static Survey put(Survey survey, List<Reel> reels) {
        Map<String, String> renamed = new HashMap<>();
        for (int i = 0; i < reels.size() && reels.size() == survey.reels().size(); i++) {
            if (!reels.get(i).id().equals(survey.reels().get(i).id())) {
                renamed.put(survey.reels().get(i).id(), reels.get(i).id());
            }
        }
        Survey changed = survey.withReels(reels);
        return renamed.isEmpty() ? changed : changed.withCoves(survey.coves().stream().map(cove -> renamed(cove, renamed)).toList());
    }

    private static Cove renamed(Cove cove, Map<String, String> names) {
        return cove.withPlacements(cove.placements().stream().map(placement -> new Placement(
                names.getOrDefault(placement.reel(), placement.reel()), placement.fromM(), placement.toM(), placement.knownFrom(),
                placement.installed())).toList());
    }
}
