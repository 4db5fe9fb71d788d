package covewalk.app.walk;

import covewalk.app.text.LengthWords;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Reading;
import covewalk.survey.Role;
import covewalk.survey.SetUp;
import covewalk.verdict.StationPair;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** All that stands on the screen in words while one walks. */
final class WalkSays {

    private final Texts texts;
    private final LengthWords lengths;
    private final StationWords stations;
    private final ReadOnlyStringWrapper where = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper turn = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper numbers = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper kept = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper held = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper due = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper dueShort = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper dueNow = new ReadOnlyBooleanWrapper();
    private final ObjectProperty<Neighbour> neighbour = new SimpleObjectProperty<>(Neighbour.NONE);
    private final ObjectProperty<Question> question = new SimpleObjectProperty<>();

    WalkSays(Texts texts, LengthWords lengths) {
        this.texts = texts;
        this.lengths = lengths;
        this.stations = new StationWords(texts, lengths);
    }

    /** The station that is read next, or that none is. */
    ReadOnlyStringProperty whereProperty() {
        return where.getReadOnlyProperty();
    }

    /** The how-manieth reading there, its round, and what keeps it from counting. */
    ReadOnlyStringProperty turnProperty() {
        return turn.getReadOnlyProperty();
    }

    /** The colour numbers of the reading typed last. */
    ReadOnlyStringProperty numbersProperty() {
        return numbers.getReadOnlyProperty();
    }

    /** That a reading is on disk; to be taken away after a moment. */
    ReadOnlyStringProperty keptProperty() {
        return kept.getReadOnlyProperty();
    }

    void keptWasSeen() {
        kept.set("");
    }

    /** How many readings are not on disk; empty while all goes well. */
    ReadOnlyStringProperty heldProperty() {
        return held.getReadOnlyProperty();
    }

    /** When the reference spot is due. */
    ReadOnlyStringProperty dueProperty() {
        return due.getReadOnlyProperty();
    }

    /** The same in a few letters. */
    ReadOnlyStringProperty dueShortProperty() {
        return dueShort.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty dueNowProperty() {
        return dueNow.getReadOnlyProperty();
    }

    ObjectProperty<Neighbour> neighbour() {
        return neighbour;
    }

    /** What was typed looks like a slip; null where it does not. */
    ObjectProperty<Question> question() {
        return question;
    }

    LengthWords lengths() {
        return lengths;
    }

    void where(WalkModel model) {
        Optional<Cove> cove = model.way().cove();
        if (cove.isEmpty()) {
            turn.set("");
            return;
        }
        Aim aim = model.way().aim();
        String station = stations.of(cove.get(), aim.atM());
        where.set(aim.corrects().isPresent() ? texts.get("where.correct", aim.corrects().get().id(), station)
                : aim.role() == Role.WALK ? station : texts.get("where." + aim.role().code(), station));
        turn.set(aim.walks() ? turn(model, cove.get()) : texts.get("turn.aside"));
    }

    private String turn(WalkModel model, Cove cove) {
        int nth = model.way().readHere() + 1;
        int wanted = Math.max(nth, model.way().guide().wanted(model.way().aim()));
        SetUp setUp = model.survey().survey().setUp(model.way().guide().setUp()).orElseThrow();
        String near = stations.tooNear(cove, model.way().aim().atM(), setUp);
        return texts.get("turn", Integer.toString(nth), Integer.toString(wanted), Integer.toString(model.round()))
                + (near.isEmpty() ? "" : " " + near);
    }

    void noWhere(String says) {
        where.set(says);
    }

    void due(ReferenceDue reference) {
        due.set(reference.inWords(texts));
        dueNow.set(reference.isDue());
        dueShort.set(reference.isDue() ? texts.get("reference.short.due")
                : texts.get("reference.short.later", Integer.toString(ReferenceDue.READINGS - reference.readings())));
    }

    void numbers(Reading reading, int repeat) {
        numbers.set(new ReadingNumbers(texts).of(reading, repeat));
    }

    void pair(Optional<StationPair> pair, Reading reading, double limitSteps) {
        if (reading.role() == Role.REFERENCE) {
            neighbour.set(Neighbour.plain(pair.map(found -> texts.get("neighbour.reference",
                    texts.numbers().fixed(found.difference().steps(), 1), texts.words().towards(found.difference().towards())))
                    .orElse(texts.get("neighbour.reference.first"))));
        } else {
            neighbour.set(pair.map(found -> Neighbour.of(found, limitSteps, texts)).orElse(Neighbour.plain(texts.get("neighbour.first"))));
        }
    }

    void takenBack(Reading reading) {
        neighbour.set(Neighbour.plain(texts.get("taken-back", reading.id(), lengths.brief(reading.positionM().value()))));
        numbers.set("");
    }

    void kept(Reading reading) {
        kept.set(reading.withdraws() ? texts.get("kept.withdrawal") : texts.get("kept", lengths.brief(reading.positionM().value())));
    }

    void held(int waiting, boolean trouble) {
        held.set(trouble && waiting > 0 || waiting > 1 ? texts.count("held", waiting) : "");
    }
}
