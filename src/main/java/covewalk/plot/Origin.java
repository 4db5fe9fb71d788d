package covewalk.plot;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.UvPrime;
import covewalk.survey.Cove;
import covewalk.survey.StatedColour;
import java.util.Optional;

/**
 * The colour that a cove's colours are drawn against. A cove that is all one colour, and far from its target, must not
 * look perfect: so the target goes first.
 *
 * @param white the same as CCT and Duv
 */
record Origin(UvPrime colour, CctDuv white, boolean isTarget) {

    /** The cove's target, else its mean; empty where nothing was read, or where neither has a CCT. */
    static Optional<Origin> of(Cove cove, CoveMean mean) {
        if (mean.stretches().isEmpty()) {
            return Optional.empty();
        }
        return cove.target().map(StatedColour::toUvPrime).flatMap(target -> of(target, true))
                .or(() -> of(mean.colour(), false));
    }

    private static Optional<Origin> of(UvPrime colour, boolean isTarget) {
        return ColourTemperature.of(colour) instanceof CctDuv white ? Optional.of(new Origin(colour, white, isTarget))
                : Optional.empty();
    }

    /** The key of a sentence that says which of the two it is; {@code start} ends in a dot. */
    String key(String start) {
        return start + (isTarget ? "target" : "mean");
    }
}
