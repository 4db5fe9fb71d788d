package covewalk.app.site;

import covewalk.app.forms.Answers;
import covewalk.app.forms.Ask;
import covewalk.app.forms.Bounds;
import covewalk.app.forms.Kind;
import covewalk.app.forms.Part;
import covewalk.app.forms.Writing;
import covewalk.colour.StepRule;
import covewalk.survey.Limits;
import covewalk.survey.Survey;
import java.util.List;
import java.util.Map;

/** What the site allows, and how sure a verdict has to be. */
final class LimitsKind implements Kind<Limits> {

    static final Part<Limits> PART = Part.always("limits", Survey::limits, Survey::with);

    private static final Bounds STEPS = Bounds.above(0, 100);
    private static final Bounds RATE = Bounds.between(0, 0.5);

    @Override
    public List<Ask> asks() {
        return List.of(Ask.typed("neighbourSteps"), Ask.typed("setBy"), Ask.typed("targetSteps"), Ask.typed("errorRate"),
                Ask.oneOf("stepRule", "uv-circle", "ellipse"), Ask.oneOf("errorPer", "joint", "survey"));
    }

    @Override
    public Map<String, String> texts(Limits limits, Writing writing) {
        return Map.of("neighbourSteps", writing.number(limits.neighbourSteps()), "targetSteps", writing.number(limits.targetSteps()),
                "setBy", limits.setBy(), "stepRule", limits.stepRule().code(), "errorRate", writing.number(limits.errorRate()),
                "errorPer", limits.errorPer().code());
    }

    /** The clause stays while the number changes: the person at the form sees both, and who set it is asked for beside it. */
    @Override
    public Limits read(Answers answers, Limits before) {
        return new Limits(answers.needed("neighbourSteps", before.neighbourSteps(), STEPS),
                answers.number("targetSteps", before.targetSteps(), STEPS), answers.text("setBy", before.setBy()),
                answers.choice("stepRule", before.stepRule(), StepRule::of), answers.needed("errorRate", before.errorRate(), RATE),
                answers.choice("errorPer", before.errorPer(), Limits.ErrorPer::of));
    }
}
