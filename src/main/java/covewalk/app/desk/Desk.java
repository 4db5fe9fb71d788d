package covewalk.app.desk;

import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.Outcome;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** What all places work with. For the screen's thread. */
public final class Desk {

    private final Opener opener;
    private final Workers workers;
    private final Clock clock;
    private final ReadOnlyObjectWrapper<Memory> memory;
    private final ReadOnlyObjectWrapper<OpenSurvey> survey = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper opening = new ReadOnlyBooleanWrapper();
    private final ObjectProperty<Place> place = new SimpleObjectProperty<>(Place.SURVEYS);
    private final ObjectProperty<Spot> spot = new SimpleObjectProperty<>();
    private Consumer<Path> files = nowhere -> { };

    public Desk(Opener opener, Workers workers, Clock clock, Memory remembered) {
        this.opener = opener;
        this.workers = workers;
        this.clock = clock;
        this.memory = new ReadOnlyObjectWrapper<>(remembered);
        place.addListener((property, before, now) -> memory.set(memory.get().at(now)));
    }

    /** The survey that is open; null where none is. */
    public ReadOnlyObjectProperty<OpenSurvey> surveyProperty() {
        return survey.getReadOnlyProperty();
    }

    public OpenSurvey survey() {
        return survey.get();
    }

    /** Whether a survey is being opened. */
    public ReadOnlyBooleanProperty openingProperty() {
        return opening.getReadOnlyProperty();
    }

    public ObjectProperty<Place> placeProperty() {
        return place;
    }

    public void go(Place there) {
        place.set(there);
    }

    /** What is looked at in the open survey; null where nothing is yet. */
    public ObjectProperty<Spot> spotProperty() {
        return spot;
    }

    /** What the next start should know; whoever keeps it writes it to disk. */
    public ReadOnlyObjectProperty<Memory> memoryProperty() {
        return memory.getReadOnlyProperty();
    }

    public Settings settings() {
        return memory.get().settings();
    }

    public void choose(Settings settings) {
        memory.set(memory.get().with(settings));
    }

    /** @param meterShows which numbers the meter shows, in the words of the walk */
    public void remember(String meterShows) {
        memory.set(memory.get().withMeterShows(meterShows));
    }

    public void forget(Path folder) {
        memory.set(memory.get().without(folder));
    }

    /** The texts of a package of screens, in the language chosen. */
    public Texts texts(Class<?> owner) {
        return new Texts(owner, settings().language());
    }

    /** @param opener shows a file with whatever program this computer has for it */
    public void showFilesWith(Consumer<Path> opener) {
        files = opener;
    }

    /** Shows a file with whatever program this computer has for it. */
    public void showFile(Path file) {
        files.accept(file);
    }

    public Workers workers() {
        return workers;
    }

    public Clock clock() {
        return clock;
    }

    /** @param refused what is wrong with the folder, where it cannot be opened; the survey before stays open then */
    public void open(Path folder, Consumer<List<Problem>> refused) {
        if (survey.get() != null && survey.get().folder().equals(folder)) {
            return; // its lock is ours already
        }
        opening.set(true);
        opener.open(folder, outcome -> opened(folder, outcome, refused));
    }

    /** Begins a survey in a new folder; see {@link Opener#create}. */
    public void create(Path folder, Survey described, List<Reading> readings, Consumer<List<Problem>> refused) {
        opening.set(true);
        opener.create(folder, described, readings, outcome -> opened(folder, outcome, refused));
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

    /** Gives the open survey's folder back. */
    public void close() {
        if (survey.get() != null) {
            survey.get().close();
            survey.set(null);
        }
    }
}
