package covewalk.survey.file.description;

import covewalk.colour.StepRule;
import covewalk.survey.Limits;

/** The limits in {@code survey.json}. */
final class LimitsEntry {

    private static final Range STEPS = Range.above(0, 100);
    private static final Range ERROR_RATE = Range.between(0, 0.5);

    private LimitsEntry() {
    }

    static Limits read(Fields fields) {
        return new Limits(fields.neededNumber("neighbourSteps", STEPS, 1), fields.number("targetSteps", STEPS),
                fields.text("setBy"), fields.word("stepRule", StepRule::of, "uv-circle, ellipse").orElse(StepRule.UV_CIRCLE),
                fields.number("errorRate", ERROR_RATE).orElse(Limits.USUAL_ERROR_RATE),
                fields.word("errorPer", Limits.ErrorPer::of, "joint, survey").orElse(Limits.ErrorPer.JOINT));
    }

    static void write(Overlay to, Limits limits) {
        to.number("neighbourSteps", limits.neighbourSteps()).number("targetSteps", limits.targetSteps())
                .text("setBy", limits.setBy()).text("stepRule", limits.stepRule().code())
                .number("errorRate", limits.errorRate()).text("errorPer", limits.errorPer().code());
    }
}
