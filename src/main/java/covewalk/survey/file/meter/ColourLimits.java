package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.TypedColour;
import java.util.Optional;

/** Placeholder until TypedColourCheck is there. */
final class ColourLimits {

    private ColourLimits() {
    }

    static Optional<Problem> problem(TypedColour colour, NumberCells cells) {
        return Optional.empty();
    }
}
