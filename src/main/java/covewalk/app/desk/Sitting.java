package covewalk.app.desk;

import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.Outcome;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
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
    final ObjectProperty<List<Problem>> refused = new SimpleObjectProperty<>(List.of());
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
        if (!wouldBeLost().isEmpty()) {
            refused.accept(wouldBeLost());
            return;
        }
        opening.set(true);
        opener.open(folder, memory.get().withoutDrift().contains(remembered(folder)), outcome -> opened(folder, outcome, refused));
    }

    private boolean isOpen(Path folder) {
        return survey.get() != null && survey.get().folder().equals(folder);
    }

    void create(Path folder, Survey described, List<Reading> readings, Consumer<List<Problem>> refused) {
        if (opening.get()) {
            return;
        }
        if (!wouldBeLost().isEmpty()) {
            refused.accept(wouldBeLost());
            return;
        }
        opening.set(true);
        opener.create(folder, described, readings, outcome -> opened(folder, outcome, refused));
    }

    private List<Problem> wouldBeLost() {
        return survey.get() == null ? List.of() : survey.get().wouldBeLost();
    }

    void keepElsewhere(Path folder, Consumer<List<Problem>> refused) {
        if (opening.get()) {
            return;
        }
        opening.set(true);
        OpenSurvey now = survey.get();
        Survey described = now.survey();
        List<Reading> held = now.readings();
        opener.keepElsewhere(now.folder(), folder, described, held, now.correctDriftProperty().get(), outcome -> {
            opening.set(false);
            if (outcome.refused()) {
                refused.accept(outcome.problems());
            } else {
                handOver(now, described, held, outcome.value().orElseThrow());
                replaceBy(folder, outcome.value().orElseThrow());
            }
        });
    }

    /** What came in while the files were copied, which may take minutes on a stick. */
    private static void handOver(OpenSurvey before, Survey described, List<Reading> held, OpenSurvey now) {
        if (before.survey() != described) {
            now.change(old -> before.survey());
        }
        Set<String> ids = held.stream().map(Reading::id).collect(Collectors.toSet());
        now.keep(before.readings().stream().filter(reading -> !ids.contains(reading.id())).map(reading -> reading.atLine(0)).toList());
    }

    private void opened(Path folder, Outcome<OpenSurvey> outcome, Consumer<List<Problem>> refused) {
        opening.set(false);
        if (outcome.refused()) {
            refused.accept(outcome.problems());
        } else if (!wouldBeLost().isEmpty()) { // typed meanwhile
            outcome.value().orElseThrow().close();
            refused.accept(wouldBeLost());
        } else {
            replaceBy(folder, outcome.value().orElseThrow());
        }
    }

    private static Path remembered(Path folder) {
        return folder.toAbsolutePath().normalize();
    }

    private void replaceBy(Path folder, OpenSurvey opened) {
        close();
        refused.set(List.of());
        spot.set(null);
        Path remembered = remembered(folder);
        memory.set(memory.get().opened(remembered).withDrift(remembered, opened.correctDriftProperty().get()));
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
