package covewalk.app.desk;

import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.Outcome;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** From the start of the window to its end: what is open, and where the person is. Outlives the desks at which screens sit. */
final class Sitting {

    final Opener opener;
    final Workers workers;
    final Clock clock;
    final ObjectProperty<Memory> memory;
    final ObjectProperty<OpenSurvey> survey = new SimpleObjectProperty<>();
    final BooleanProperty opening = new SimpleBooleanProperty();
    final ObjectProperty<Place> place = new SimpleObjectProperty<>(Place.SURVEYS);
    final ObjectProperty<Spot> spot = new SimpleObjectProperty<>();
    Consumer<Path> files = nowhere -> { };

    Sitting(Opener opener, Workers workers, Clock clock, Memory remembered) {
        this.opener = opener;
        this.workers = workers;
        this.clock = clock;
        this.memory = new SimpleObjectProperty<>(remembered);
        place.addListener((property, before, now) -> memory.set(memory.get().at(now)));
    }

    void open(Path folder, Consumer<List<Problem>> refused) {
        if (opening.get() || isOpen(folder)) {
            return; // its lock is ours already, or will be: a second click must not find it held
        }
        opening.set(true);
        opener.open(folder, outcome -> opened(folder, outcome, refused));
    }

    private boolean isOpen(Path folder) {
        return survey.get() != null && survey.get().folder().equals(folder);
    }

    void create(Path folder, Survey described, List<Reading> readings, Consumer<List<Problem>> refused) {
        if (opening.get()) {
            return;
        }
        opening.set(true);
        opener.create(folder, described, readings, outcome -> opened(folder, outcome, refused));
    }

    void keepElsewhere(Path folder, Consumer<List<Problem>> refused) {
        if (opening.get()) {
            return;
        }
        opening.set(true);
        OpenSurvey now = survey.get();
        opener.keepElsewhere(now.folder(), folder, now.survey(), now.readings(), outcome -> opened(folder, outcome, refused));
    }

    private void opened(Path folder, Outcome<OpenSurvey> outcome, Consumer<List<Problem>> refused) {
        opening.set(false);
        if (outcome.refused()) {
            refused.accept(outcome.problems());
            return;
        }
        close();
        spot.set(null);
        Path remembered = folder.toAbsolutePath().normalize();
        memory.set(memory.get().opened(remembered));
        OpenSurvey opened = outcome.value().orElseThrow();
        opened.correctDriftProperty().set(memory.get().withoutDrift().contains(remembered));
        opened.correctDriftProperty().addListener((property, before, now) -> memory.set(memory.get().withDrift(remembered, now)));
        survey.set(opened);
    }

    void close() {
        if (survey.get() != null) {
            survey.get().close();
            survey.set(null);
        }
    }
}
