package covewalk.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The reels: their ids, serials and claims, and whether there is as much of each as was used. */
final class ReelCheck {

    /** Claims run from 1 to 7 steps (common practice, no source); above that somebody may have meant something else. */
    private static final double MOST_USUAL_STEPS = 10;
    /** Reels run a little over their label (common practice, no source). */
    private static final double OVER_LABEL = 1.02;

    private final Survey survey;
    private final List<Problem> problems = new ArrayList<>();

    private ReelCheck(Survey survey) {
        this.survey = survey;
    }

    static List<Problem> problems(Survey survey) {
        ReelCheck check = new ReelCheck(survey);
        check.problems.addAll(DuplicateIds.problems("reels", survey.reels().stream().map(Reel::id).toList()));
        check.checkSerials();
        check.checkClaims();
        check.checkLengths();
        return check.problems;
    }

    private void checkSerials() {
        Map<String, String> first = new HashMap<>();
        for (int i = 0; i < survey.reels().size(); i++) {
            Reel reel = survey.reels().get(i);
            String before = reel.serial().isBlank() ? null
                    : first.putIfAbsent(reel.maker() + '\n' + reel.serial(), reel.id());
            if (before != null) {
                problems.add(Problem.warning("survey.serial-twice", reel.serial(), before).inColumn(path(i, "serial")));
            }
        }
    }

    private void checkClaims() {
        for (int i = 0; i < survey.reels().size(); i++) {
            double steps = survey.reels().get(i).claimedSteps().orElse(1);
            if (steps > MOST_USUAL_STEPS) {
                problems.add(Problem.warning("survey.claim-wide", ColourDigits.metres(steps)).inColumn(path(i, "claimedSteps")));
            }
        }
    }

    private void checkLengths() {
        Map<String, Double> used = new HashMap<>();
        survey.coves().stream().flatMap(cove -> cove.placements().stream())
                .forEach(placement -> used.merge(placement.reel(), placement.lengthM(), Double::sum));
        for (int i = 0; i < survey.reels().size(); i++) {
            Reel reel = survey.reels().get(i);
            double length = used.getOrDefault(reel.id(), 0.0);
            if (length > OVER_LABEL * reel.lengthM().orElse(Double.POSITIVE_INFINITY)) {
                problems.add(Problem.warning("survey.reel-used-up", ColourDigits.metres(length),
                        ColourDigits.metres(reel.lengthM().orElseThrow())).inColumn(path(i, "lengthM")));
            }
        }
    }

    private static String path(int index, String field) {
        return "reels[" + index + "]." + field;
    }
}
