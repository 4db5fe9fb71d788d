package covewalk.app.open;

import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.verdict.Judge;
import covewalk.verdict.Judgement;
import java.util.List;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Judges again after every change, beside the screen. While a sum runs, further changes wait for it and are judged
 * together.
 */
final class Judging {

    private static final Logger LOG = Logger.getLogger("covewalk.app");

    /** What is judged: taken on the screen's thread, so that it fits together. */
    record Input(Survey survey, List<Reading> log, boolean correctDrift) {
    }

    private final Workers workers;
    private final Supplier<Input> input;
    private final ReadOnlyObjectWrapper<Judgement> judgement = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper();
    private boolean again;

    Judging(Workers workers, Supplier<Input> input) {
        this.workers = workers;
        this.input = input;
    }

    ReadOnlyObjectProperty<Judgement> judgement() {
        return judgement.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty running() {
        return running.getReadOnlyProperty();
    }

    /** On the screen's thread. */
    void ask() {
        if (running.get()) {
            again = true;
            return;
        }
        running.set(true);
        Input now = input.get();
        workers.sums().execute(() -> {
            Judgement made = judge(now);
            workers.screen().execute(() -> told(made));
        });
    }

    private Judgement judge(Input now) {
        try {
            return new Judge().judge(now.survey(), now.log(), now.correctDrift());
        } catch (RuntimeException | Error fault) { // of ours, or no memory left: it must not take the walk with it
            LOG.log(Level.WARNING, "could not judge", fault);
            return null;
        }
    }

    private void told(Judgement made) {
        running.set(false);
        if (made != null) {
            judgement.set(made);
        }
        if (again) {
            again = false;
            ask();
        }
    }
}
