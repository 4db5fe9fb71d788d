package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedColourCheck;
import java.util.Optional;

/** Whether a colour can be in a survey at all, in the words that a colour typed by hand meets too. */
final class ColourLimits {

    private ColourLimits() {
    }

    /** The first thing that cannot be. */
    static Optional<Problem> refusal(TypedColour colour) {
        return TypedColourCheck.problems(colour).stream().filter(Problem::refused).findFirst();
    }

    static boolean isSound(TypedColour colour) {
        return refusal(colour).isEmpty();
    }
}
