package covewalk.verdict;

import covewalk.colour.CctDuv;
import covewalk.colour.ColourTemperature;
import covewalk.colour.StepPlane;
import covewalk.colour.StepRule;
import covewalk.survey.Cove;
import covewalk.survey.StatedColour;
import covewalk.survey.Survey;

/** Which plane a cove's differences are counted in. */
final class Planes {

    private Planes() {
    }

    /** Under the ellipse rule a cove without a target, or whose target has no CCT, is counted in circles. */
    static StepPlane of(Survey survey, Cove cove) {
        if (survey.limits().stepRule() == StepRule.ELLIPSE && cove.target().isPresent()
                && temperatureOf(cove.target().get()) instanceof CctDuv white) {
            return StepPlane.of(StepRule.ELLIPSE, white.cctK());
        }
        return StepPlane.circle();
    }

    private static ColourTemperature temperatureOf(StatedColour target) {
        return ColourTemperature.of(target.toUvPrime());
    }
}
