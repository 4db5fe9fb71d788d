package covewalk.app.desk;

import covewalk.app.open.OpenSurvey;
import covewalk.app.open.Opener;
import covewalk.app.open.Workers;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;

/** What all places work with. For the screen's thread. */
public final class Desk {

    private final Sitting sitting;
    private final ReadOnlyObjectWrapper<Memory> memory = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<OpenSurvey> survey = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<List<Problem>> refused = new ReadOnlyObjectWrapper<>();
    private final ObjectProperty<Place> place = new SimpleObjectProperty<>();
    private final ObjectProperty<Spot> spot = new SimpleObjectProperty<>();

    public Desk(Opener opener, Workers workers, Clock clock, Memory remembered) {
        this(new Sitting(opener, workers, clock, remembered));
    }

    private Desk(Sitting sitting) {
        this.sitting = sitting;
        memory.bind(sitting.memory);
        survey.bind(sitting.survey);
        refused.bind(sitting.refused);
        place.bindBidirectional(sitting.place);
        spot.bindBidirectional(sitting.spot);
    }

    /** Another desk with the same survey on it, for screens that may be replaced by others. */
    public Desk another() {
        return new Desk(sitting);
    }

    /** Nothing lies here any more, and nothing is heard: the screens that sat here let go of the survey. */
    public void leave() {
        place.unbindBidirectional(sitting.place);
        spot.unbindBidirectional(sitting.spot);
        memory.unbind();
        refused.unbind();
        survey.unbind();
        survey.set(null);
    }

    /** The survey that is open; null where none is. */
    public ReadOnlyObjectProperty<OpenSurvey> surveyProperty() {
        return survey.getReadOnlyProperty();
    }

    public OpenSurvey survey() {
        return survey.get();
    }

    /** What is wrong with a folder that was to be opened by nobody's hand here, such as one named on the command line. */
    public ReadOnlyObjectProperty<List<Problem>> refusedProperty() {
        return refused.getReadOnlyProperty();
    }

    public void refuse(List<Problem> why) {
        sitting.refused.set(List.copyOf(why));
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
        sitting.memory.set(memory.get().with(settings));
    }

    /** @param meterShows which numbers the meter shows, in the words of the walk */
    public void remember(String meterShows) {
        sitting.memory.set(memory.get().withMeterShows(meterShows));
    }

    public void forget(Path folder) {
        sitting.memory.set(memory.get().without(folder));
    }

    /** The texts of a package of screens, in the language chosen. */
    public Texts texts(Class<?> owner) {
        return new Texts(owner, settings().language());
    }

    /** @param opener shows a file with whatever program this computer has for it */
    public void showFilesWith(Consumer<Path> opener) {
        sitting.files = opener;
    }

    /** Shows a file with whatever program this computer has for it. */
    public void showFile(Path file) {
        sitting.files.accept(file);
    }

    public Workers workers() {
        return sitting.workers;
    }

    public Clock clock() {
        return sitting.clock;
    }

    /**
     * @param refused what is wrong with the folder, where it cannot be opened; the survey before stays open then.
     *     So it does while something of it is not on disk. Nothing is told while another is being opened, and nothing done: the first click counts
     */
    public void open(Path folder, Consumer<List<Problem>> refused) {
        sitting.open(folder, refused);
    }

    /** Begins a survey in a new folder; see {@link Opener#create}. */
    public void create(Path folder, Survey described, List<Reading> readings, Consumer<List<Problem>> refused) {
        sitting.create(folder, described, readings, refused);
    }

    /** Goes on with the open survey in another folder; see {@link Opener#keepElsewhere}. */
    public void keepElsewhere(Path folder, Consumer<List<Problem>> refused) {
        sitting.keepElsewhere(folder, refused);
    }

    /** Gives the open survey's folder back. */
    public void close() {
        sitting.close();
    }
}
