package covewalk.app.strip;

import covewalk.app.desk.Desk;
import covewalk.app.open.OpenSurvey;
import covewalk.app.text.Texts;
import covewalk.verdict.Judgement;
import covewalk.verdict.Note;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;

/**
 * Whether a drift of light or meter, as the reference spot shows it, is taken off the readings before they are judged:
 * linearly in time, only where somebody chooses so, and said wherever its verdicts stand.
 */
final class Drift {

    private final Desk desk;
    private final Texts texts;
    /** Held, since who listens to a value that nobody holds hears nothing after a while. */
    private final ObservableValue<Judgement> judgement;
    private final ObservableValue<Boolean> asked;
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper takenOff = new ReadOnlyBooleanWrapper();

    Drift(Desk desk) {
        this.desk = desk;
        this.texts = desk.texts(Drift.class);
        judgement = desk.surveyProperty().flatMap(OpenSurvey::judgementProperty);
        asked = desk.surveyProperty().flatMap(OpenSurvey::correctDriftProperty);
        InvalidationListener follow = changed -> follow();
        judgement.addListener(follow);
        asked.addListener(follow);
        follow();
    }

    /** Whether the verdicts of a judgement hold without a drift; it says so of itself, whatever was chosen since. */
    static boolean isTakenOff(Judgement judgement) {
        return judgement != null && judgement.notes().stream().anyMatch(note -> note.kind() == Note.Kind.DRIFT_CORRECTED);
    }

    /** What drifted, and what became of it; empty where nothing drifts that could be taken off. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    /** Whether it is to be taken off. */
    ReadOnlyBooleanProperty takenOffProperty() {
        return takenOff.getReadOnlyProperty();
    }

    void takeOff(boolean off) {
        desk.survey().correctDriftProperty().set(off);
    }

    private void follow() {
        boolean off = Boolean.TRUE.equals(asked.getValue());
        Judgement now = judgement.getValue();
        takenOff.set(off);
        String corrected = sentences(now, Note.Kind.DRIFT_CORRECTED);
        String seen = sentences(now, Note.Kind.REFERENCE_DRIFT);
        says.set(!corrected.isEmpty() ? corrected : !seen.isEmpty() ? seen : off && now != null ? texts.get("drift.none") : "");
    }

    private String sentences(Judgement now, Note.Kind kind) {
        List<Note> notes = now == null ? List.of() : now.notes();
        Stream<Note> these = notes.stream().filter(note -> note.kind() == kind).distinct();
        return these.map(note -> kind == Note.Kind.DRIFT_CORRECTED
                ? texts.get("drift.off", note.details().get(0), steps(note, 2), note.details().get(3))
                : texts.get("drift.seen", note.details().get(0), steps(note, 3), note.details().get(4))).collect(Collectors.joining(" "));
    }

    private String steps(Note note, int detail) {
        return texts.numbers().plain(Double.parseDouble(note.details().get(detail)), 2);
    }
}
