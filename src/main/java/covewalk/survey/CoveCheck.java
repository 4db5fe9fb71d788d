package covewalk.survey;

import java.util.ArrayList;
import java.util.List;

/** The coves as such: ids, feeds, targets. {@link PlacementCheck} sees to what lies in them. */
final class CoveCheck {

    private CoveCheck() {
    }

    static List<Problem> problems(Survey survey) {
        List<Problem> problems = new ArrayList<>(
                DuplicateIds.problems("coves", survey.coves().stream().map(Cove::id).toList()));
        if (survey.limits().targetSteps().isPresent() && survey.coves().stream().allMatch(cove -> cove.target().isEmpty())) {
            problems.add(Problem.warning("survey.no-target").inColumn("limits.targetSteps"));
        }
        ReelsById reels = new ReelsById(survey);
        for (int i = 0; i < survey.coves().size(); i++) {
            Cove cove = survey.coves().get(i);
            String path = "coves[" + i + "]";
            checkFeeds(cove, path, problems);
            problems.addAll(new PlacementCheck(reels, cove, path).problems());
        }
        return problems;
    }

    private static void checkFeeds(Cove cove, String path, List<Problem> problems) {
        for (int i = 0; i < cove.feeds().size(); i++) {
            double at = cove.feeds().get(i).atM();
            if (at < 0 || at > cove.lengthM() + PlacementCheck.TAPE_M) {
                problems.add(Problem.warning("survey.feed-outside", ColourDigits.metres(at),
                        ColourDigits.metres(cove.lengthM())).inColumn(path + ".feeds[" + i + "].atM"));
            }
        }
    }
}
