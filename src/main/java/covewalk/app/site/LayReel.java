package covewalk.app.site;

import covewalk.app.forms.ReelFinder;
import covewalk.app.forms.ReelFinder.Found;
import covewalk.app.forms.Refusals;
import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Placement;
import covewalk.survey.Placement.KnownFrom;
import covewalk.survey.Problem;
import covewalk.survey.Reel;
import covewalk.survey.Survey;
import covewalk.survey.Typed;
import covewalk.survey.label.Doubt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Lays reels one behind the other: scan or type a label, or nothing for one whose label is not known yet, and Enter. */
final class LayReel {

    private final CoveModel model;
    private final Supplier<Writing> writing;
    private final IntSupplier year;
    private final Texts texts;
    private final StringProperty reel = new SimpleStringProperty("");
    private final StringProperty end = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper full = new ReadOnlyBooleanWrapper();
    private final ObservableList<Reel> offered = FXCollections.observableArrayList();

    LayReel(CoveModel model, Supplier<Writing> writing, IntSupplier year, Texts texts) {
        this.model = model;
        this.writing = writing;
        this.year = year;
        this.texts = texts;
        reel.addListener((property, before, now) -> follow());
        end.addListener((property, before, now) -> follow());
        model.whenChanged(this::follow);
        follow();
    }

    StringProperty reelProperty() {
        return reel;
    }

    StringProperty endProperty() {
        return end;
    }

    /** What Enter will do. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    /** Why it did not, or what is odd about the label. */
    ReadOnlyStringProperty troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    /** Whether there is no room left in the cove. */
    ReadOnlyBooleanProperty fullProperty() {
        return full.getReadOnlyProperty();
    }

    /** Labels of the survey that have in them what is typed. */
    ObservableList<Reel> offered() {
        return offered;
    }

    private void follow() {
        Optional<Cove> cove = model.cove();
        full.set(cove.isEmpty() || NewPlacement.isFull(cove.get()));
        if (cove.isEmpty()) {
            return;
        }
        ReelFinder finder = finder();
        Found found = finder.find(reel.get());
        offered.setAll(finder.offered(reel.get()));
        if (full.get()) {
            says.set(texts.get("lay.full", writing.get().length(cove.get().lengthM())));
        } else {
            says.set(texts.get(found.isNew() ? "lay.new" : "lay.known", found.reel().id(),
                    writing.get().length(NewPlacement.nextM(cove.get())), writing.get().length(endM(cove.get(), found.reel()))));
        }
    }

    private ReelFinder finder() {
        return new ReelFinder(model.survey(), year.getAsInt());
    }

    /** Where it is to end: as typed, else a reel's length on, and never behind the end of the cove. */
    private double endM(Cove cove, Reel found) {
        double from = NewPlacement.nextM(cove);
        return writing.get().metres(end.get()).map(Typed::value)
                .orElse(Math.min(cove.lengthM(), from + found.lengthM().orElse(NewPlacement.USUAL_M)));
    }

    /** Puts in the box what was offered. */
    void pick(Reel picked) {
        reel.set(picked.id());
    }

    /** @return whether it was laid */
    boolean lay() {
        trouble.set("");
        Optional<Cove> cove = model.cove();
        if (cove.isEmpty() || NewPlacement.isFull(cove.get())) {
            return false;
        }
        if (!end.get().isBlank() && writing.get().metres(end.get()).isEmpty()) {
            trouble.set(texts.get("lay.no-length", end.get()));
            return false;
        }
        Found found = finder().find(reel.get());
        double to = endM(cove.get(), found.reel());
        if (to <= NewPlacement.nextM(cove.get())) {
            trouble.set(texts.get("lay.no-room", writing.get().length(NewPlacement.nextM(cove.get()))));
            return false;
        }
        return taken(laid(found, to), found.doubts());
    }

    private List<Problem> laid(Found found, double to) {
        KnownFrom known = reel.get().isBlank() ? KnownFrom.ASSUMED : KnownFrom.SEEN;
        return model.change(survey -> found.isNew() ? with(survey, found.reel()) : survey,
                cove -> NewPlacement.behindTheLast(cove, found.reel().id(), to, known));
    }

    private boolean taken(List<Problem> problems, Set<Doubt> doubts) {
        trouble.set(problems.isEmpty() ? inWords(doubts) : new Refusals(texts).sentences(problems));
        if (problems.isEmpty()) {
            reel.set("");
            end.set("");
        }
        return problems.isEmpty();
    }

    private String inWords(Set<Doubt> doubts) {
        return doubts.stream().map(doubt -> texts.get("doubt." + doubt.code())).collect(Collectors.joining(" "));
    }

    /** Cuts a joint in at a place of the strip; the far side gets a reel of which nothing is known yet. */
    void jointAt(double atM) {
        Cove cove = model.cove().orElseThrow();
        String id = finder().nextId();
        Optional<Cove> cut = NewPlacement.jointAt(cove, atM, id);
        trouble.set(cut.isEmpty() ? texts.get("lay.no-joint") : new Refusals(texts).sentences(
                model.change(survey -> with(survey, ReelFinder.blank(id)), before -> cut.get())));
    }

    private static Survey with(Survey survey, Reel reel) {
        List<Reel> reels = new ArrayList<>(survey.reels());
        reels.add(reel);
        return survey.withReels(reels);
    }

    /** The reel of a placement, for a list. */
    String line(Placement placement) {
        return texts.get("cove.placement", writing.get().length(placement.fromM()), writing.get().length(placement.toM()),
                placement.reel());
    }
}
