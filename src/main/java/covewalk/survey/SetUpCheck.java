package covewalk.survey;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The meter's set-ups. */
final class SetUpCheck {

    private SetUpCheck() {
    }

    static List<Problem> problems(Survey survey) {
        List<Problem> problems = new ArrayList<>(
                DuplicateIds.problems("setups", survey.setUps().stream().map(SetUp::id).toList()));
        for (int i = 0; i < survey.setUps().size(); i++) {
            SetUp setUp = survey.setUps().get(i);
            String path = "setups[" + i + "]";
            checkCalibration(setUp, survey.visit().date(), path, problems);
            if (setUp.dimPercent() < 100) {
                problems.add(Problem.warning("survey.dimmed", ColourDigits.metres(setUp.dimPercent()))
                        .inColumn(path + ".dimPercent"));
            }
        }
        return problems;
    }

    private static void checkCalibration(SetUp setUp, Optional<LocalDate> visit, String path, List<Problem> problems) {
        boolean overdue = setUp.calibrationDue().isPresent() && visit.isPresent()
                && setUp.calibrationDue().get().isBefore(visit.get());
        if (overdue) {
            problems.add(Problem.warning("survey.calibration", setUp.calibrationDue().get(), visit.get())
                    .inColumn(path + ".calibrationDue"));
        }
    }
}
