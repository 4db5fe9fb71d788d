package covewalk.app.forms;

import covewalk.app.desk.Desk;
import covewalk.app.open.OpenSurvey;
import covewalk.survey.Problem;
import covewalk.survey.Soundness;
import covewalk.survey.Survey;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ChangeListener;

/** The description of the survey on the desk: every change is saved at once, and the last ones can be undone. */
public final class Description {

    private static final int MOST = 100;

    /** One change, from the survey before to the one after. */
    private record Step(Survey before, Survey after) {
    }

    private final ReadOnlyObjectWrapper<Survey> survey = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper canUndo = new ReadOnlyBooleanWrapper();
    private final Deque<Step> steps = new ArrayDeque<>();
    private final ChangeListener<Survey> follow = (property, before, now) -> show(now);
    private OpenSurvey open;

    public Description(Desk desk) {
        desk.surveyProperty().addListener((property, before, now) -> turnTo(now));
        turnTo(desk.survey());
    }

    private void turnTo(OpenSurvey other) {
        if (open != null) {
            open.surveyProperty().removeListener(follow);
        }
        open = other;
        steps.clear();
        if (open != null) {
            open.surveyProperty().addListener(follow);
        }
        show(open == null ? null : open.survey());
    }

    private void show(Survey now) {
        survey.set(now);
        canUndo.set(!steps.isEmpty() && steps.peek().after == now);
    }

    /** The survey described; null while none is open. */
    public ReadOnlyObjectProperty<Survey> surveyProperty() {
        return survey.getReadOnlyProperty();
    }

    public Survey survey() {
        return survey.get();
    }

    public Optional<OpenSurvey> open() {
        return Optional.ofNullable(open);
    }

    /** What looks wrong in the description. */
    public List<Problem> remarks() {
        return survey.get() == null ? List.of() : Soundness.of(survey.get());
    }

    /** @return why it cannot be; then nothing was changed */
    public List<Problem> change(UnaryOperator<Survey> change) {
        Survey before = open.survey();
        Survey after = change.apply(before);
        if (after.equals(before)) {
            return List.of();
        }
        steps.push(new Step(before, after));
        List<Problem> problems = open.change(now -> after);
        if (!problems.isEmpty()) {
            steps.pop();
        }
        while (steps.size() > MOST) {
            steps.removeLast();
        }
        return problems;
    }

    /** Whether the last change was made here, so that it can be undone here. */
    public ReadOnlyBooleanProperty canUndoProperty() {
        return canUndo.getReadOnlyProperty();
    }

    /** @return why it cannot be: readings taken since may stand against it */
    public List<Problem> undo() {
        Step step = steps.pop();
        List<Problem> problems = open.change(now -> step.before);
        if (!problems.isEmpty()) {
            steps.push(step);
        }
        return problems;
    }
}
