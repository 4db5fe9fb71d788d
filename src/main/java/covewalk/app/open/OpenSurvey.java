package covewalk.app.open;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.Outcome;
import covewalk.verdict.Judgement;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * The survey that is worked on. All of it is told, and asked for, on the screen's thread. A reading waits in
 * {@link #waiting()} until it is on disk and stands in {@link #log()} from then on; whatever goes wrong in between, it
 * goes on waiting.
 */
public final class OpenSurvey {

    private final Path folder;
    private final Workers workers;
    private final FolderOnDisk disk;
    private final ReadOnlyObjectWrapper<Survey> survey;
    private final ObservableList<Reading> log = FXCollections.observableArrayList();
    private final ObservableList<Reading> waiting = FXCollections.observableArrayList();
    /** Held, since who listens to a list that nobody holds hears nothing after a while. */
    private final ObservableList<Reading> logAsTold = FXCollections.unmodifiableObservableList(log);
    private final ObservableList<Reading> waitingAsTold = FXCollections.unmodifiableObservableList(waiting);
    private final ReadOnlyObjectWrapper<Reading> lastKept = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<List<Problem>> trouble = new ReadOnlyObjectWrapper<>(List.of());
    private final ObservableList<Problem> toKnow = FXCollections.observableArrayList();
    private final BooleanProperty correctDrift = new SimpleBooleanProperty();
    private final Judging judging;
    private final ReadOnlyObjectWrapper<Survey> theirs = new ReadOnlyObjectWrapper<>();
    /** The description that was on disk when this program looked last. */
    private Survey onDisk;
    private boolean writing;

    OpenSurvey(Path folder, Survey survey, List<Reading> log, FolderOnDisk disk, Workers workers) {
        this.folder = folder;
        this.workers = workers;
        this.disk = disk;
        this.onDisk = survey;
        this.survey = new ReadOnlyObjectWrapper<>(survey);
        this.log.setAll(log);
        log.forEach(reading -> disk.numbers().passOver(reading.id()));
        judging = new Judging(workers, () -> new Judging.Input(survey(), readings(), correctDrift.get()));
    }

    public Path folder() {
        return folder;
    }

    public Survey survey() {
        return survey.get();
    }

    public ReadOnlyObjectProperty<Survey> surveyProperty() {
        return survey.getReadOnlyProperty();
    }

    /** The readings that are on disk, in the order of the log, corrections and withdrawals among them. */
    public ObservableList<Reading> log() {
        return logAsTold;
    }

    /** Readings that are not on disk yet, oldest first. */
    public ObservableList<Reading> waiting() {
        return waitingAsTold;
    }

    /** Both together, as they are judged. */
    public List<Reading> readings() {
        List<Reading> all = new ArrayList<>(log);
        all.addAll(waiting);
        return all;
    }

    /** The reading that came on disk last; null before the first. */
    public ReadOnlyObjectProperty<Reading> lastKeptProperty() {
        return lastKept.getReadOnlyProperty();
    }

    /** Why what waits is not on disk; empty while all goes well. */
    public ReadOnlyObjectProperty<List<Problem>> troubleProperty() {
        return trouble.getReadOnlyProperty();
    }

    /** What looked wrong when the survey was opened, and what has to be known since. */
    public ObservableList<Problem> toKnow() {
        return toKnow;
    }

    /** All verdicts, made anew after every change; null until the first are there. */
    public ReadOnlyObjectProperty<Judgement> judgementProperty() {
        return judging.judgement();
    }

    /** Whether a judgement is being made, so that the one shown is of a moment ago. */
    public ReadOnlyBooleanProperty judgingProperty() {
        return judging.running();
    }

    /** Whether a drift that the reference spot shows is taken off. */
    public BooleanProperty correctDriftProperty() {
        return correctDrift;
    }

    /** Whether something typed is not on disk. */
    public boolean hasUnwritten() {
        return !waiting.isEmpty() || onDisk != survey();
    }

    /** Why another survey must not take the place of this one; empty where nothing would be lost by it. */
    public List<Problem> wouldBeLost() {
        return hasUnwritten() ? List.of(Problem.refusal("folder.unwritten")) : List.of();
    }

    /** An id that no reading has: the next number. */
    public String nextId() {
        return disk.numbers().next();
    }

    /** Puts a reading on disk; {@link #lastKeptProperty()} tells when it is there, {@link #troubleProperty()} why not. */
    public void keep(Reading reading) {
        keep(List.of(reading));
    }

    /** Several at once, in this order: one that corrects another stays a correction of it. */
    public void keep(List<Reading> readings) {
        readings.forEach(reading -> disk.numbers().passOver(reading.id()));
        waiting.addAll(readings);
        judging.ask();
        write();
    }

    /**
     * Changes the description and saves it.
     *
     * @return why it cannot be so, in the words of the survey's files; then nothing was changed. Empty where it was taken
     */
    public List<Problem> change(UnaryOperator<Survey> change) {
        Survey changed = change.apply(survey());
        List<Problem> refusals = Refusals.of(changed, readings());
        if (refusals.isEmpty()) {
            survey.set(changed);
            judging.ask();
            write();
        }
        return refusals;
    }

    /** Tries once more to open the folder, and to put on disk what waits. */
    public void tryAgain() {
        if (!writing) {
            begin();
        }
    }

    /**
     * The description that another program saved while another one was made here: one of the two has to be chosen, by
     * {@link #takeTheirs} or {@link #keepOurs}. Null where there is no choice. The readings do not wait for it.
     */
    public ReadOnlyObjectProperty<Survey> theirsProperty() {
        return theirs.getReadOnlyProperty();
    }

    /**
     * Goes on with the description of the other program; the one made here is kept in {@code originals/}.
     *
     * @param refused why it cannot be: that description is unsound, or readings that wait cannot stand in it
     */
    public void takeTheirs(Consumer<List<Problem>> refused) {
        Survey other = theirs.get();
        Survey ours = survey();
        List<Problem> refusals = Refusals.of(other, readings());
        if (refusals.isEmpty()) {
            choose(() -> disk.keepAside(ours), () -> {
                if (survey() == ours) { // else more was changed meanwhile, and there still is a choice
                    adopt(other);
                }
            });
        } else {
            refused.accept(refusals);
        }
    }

    /**
     * Saves the description made here; the one of the other program is kept in {@code originals/}. Where readings that are on
     * disk cannot stand in it, {@link #troubleProperty()} says so, and there still is a choice.
     */
    public void keepOurs() {
        Survey other = theirs.get();
        Survey ours = survey();
        List<Reading> held = List.copyOf(waiting);
        choose(() -> {
            disk.requireFit(held, ours);
            disk.keepTheirsAside();
        }, () -> onDisk = other);
    }

    /** What has to be on disk before a description gives way. */
    @FunctionalInterface
    private interface KeepingAside {
        void done() throws NotWritten;
    }

    private void choose(KeepingAside aside, Runnable chosen) {
        workers.disk().execute(() -> workers.screen().execute(attempt(() -> {
            aside.done();
            return () -> {
                chosen.run();
                theirs.set(null);
                tryAgain();
            };
        }, this::trouble)));
    }

    private void adopt(Survey other) {
        onDisk = other;
        survey.set(other);
        judging.ask();
    }

    /**
     * Does other work on the folder, in its turn and under its lock: an import, a seal. The log is read anew afterwards. Whoever
     * asks for it has seen the survey as it is held here; where another program made another one of it, that is shown first,
     * or the choice is offered, and nothing is done.
     *
     * @param told what came of it, or why it could not be done
     */
    public <T> void onDisk(DiskWork<T> work, Consumer<Outcome<T>> told) {
        Seen seen = new Seen(survey(), onDisk, List.copyOf(log));
        workers.disk().execute(() -> workers.screen().execute(done(work, seen, told)));
    }

    /** What was held here when some work was asked for. */
    private record Seen(Survey described, Survey known, List<Reading> log) {
    }

    /** @return what is to be told of it */
    private <T> Runnable done(DiskWork<T> work, Seen seen, Consumer<Outcome<T>> told) {
        try {
            List<Problem> opened = disk.open();
            if (disk.holdsOtherThan(seen.known(), seen.described(), seen.log())) {
                return () -> {
                    toKnow.addAll(opened);
                    tryAgain(); // reads it, and shows it or offers the choice
                    told.accept(Outcome.refused(Problem.refusal("folder.changed-meanwhile")));
                };
            }
            Outcome<T> done = new Outcome<>(Optional.of(disk.work(work)), List.of());
            List<Reading> now = disk.readings();
            return () -> {
                toKnow.addAll(opened);
                reread(now);
                if (!trouble.get().isEmpty()) { // the folder is open now, whatever kept it shut
                    tryAgain();
                }
                told.accept(done);
            };
        } catch (NotWritten notWritten) {
            return () -> told.accept(new Outcome<>(Optional.empty(), notWritten.problems()));
        } catch (RuntimeException | Error fault) { // whoever asked waits for an answer
            disk.doubt();
            List<Problem> why = NotWritten.byFault(fault).problems();
            return () -> told.accept(new Outcome<>(Optional.empty(), why));
        }
    }

    private void reread(List<Reading> now) {
        if (!now.equals(log)) {
            log.setAll(now);
            judging.ask();
        }
    }

    /** For the first time: once, whatever is chosen about a drift. */
    void judge(boolean driftTakenOff) {
        correctDrift.set(driftTakenOff);
        correctDrift.addListener((property, before, now) -> judging.ask());
        judging.ask();
    }

    void know(List<Problem> problems) {
        toKnow.addAll(problems);
    }

    void trouble(List<Problem> problems) {
        trouble.set(List.copyOf(problems));
    }

    /** One write at a time; what comes meanwhile goes with the next. */
    private void write() {
        if (!writing && hasUnwritten()) {
            begin();
        }
    }

    private void begin() {
        writing = true;
        Writing held = new Writing(List.copyOf(waiting), survey(), onDisk);
        workers.disk().execute(() -> workers.screen().execute(attempt(() -> {
            Writing.Done done = held.to(disk);
            return () -> written(done);
        }, this::notWritten)));
    }

    /** Something that is put on disk. */
    @FunctionalInterface
    private interface Attempt {
        /** @return what is to be told of it */
        Runnable done() throws NotWritten;
    }

    /** @param failed told why it could not be done */
    private Runnable attempt(Attempt attempt, Consumer<List<Problem>> failed) {
        try {
            return attempt.done();
        } catch (NotWritten notWritten) {
            return () -> failed.accept(notWritten.problems());
        } catch (RuntimeException | Error fault) { // else all that is typed from now on would wait and nobody be told
            disk.doubt();
            List<Problem> why = NotWritten.byFault(fault).problems();
            return () -> failed.accept(why);
        }
    }

    private void written(Writing.Done done) {
        writing = false;
        toKnow.addAll(done.opened());
        List<Reading> kept = done.kept().readings();
        show(done.kept());
        follow(kept);
        waiting.remove(0, kept.size());
        boolean settled = settled(done);
        if (settled && !trouble.get().isEmpty()) {
            trouble.set(List.of());
        }
        if (!kept.isEmpty()) {
            lastKept.set(kept.get(kept.size() - 1));
        }
        if (settled || done.fits() && !waiting.isEmpty()) {
            write();
        }
    }

    /** Whether one description is on disk and here, or can be without asking anybody. */
    private boolean settled(Writing.Done done) {
        if (done.writing().known() != onDisk) {
            return true; // one of the two was chosen meanwhile
        }
        if (done.theirs().isEmpty()) {
            onDisk = done.writing().described();
            theirs.set(null);
            return true;
        }
        Survey other = done.theirs().get();
        if (survey() == onDisk && done.fits()) {
            adopt(other);
            toKnow.add(Problem.warning("folder.described-anew"));
            return true;
        }
        theirs.set(other);
        trouble.set(List.of(Problem.refusal("folder.described-elsewhere")));
        return false;
    }

    /** What waits still names a reading that it corrects as that was called until now. */
    private void follow(List<Reading> kept) {
        for (int i = 0; i < kept.size(); i++) {
            String asked = waiting.get(i).id();
            String given = kept.get(i).id();
            if (!asked.equals(given)) {
                waiting.replaceAll(later -> later.replaces().equals(asked) ? Numbering.of(later, later.id(), given) : later);
                judging.ask();
            }
        }
    }

    private void show(Kept written) {
        if (written.before().isEmpty()) {
            log.addAll(written.readings());
        } else {
            log.setAll(written.after(log));
            judging.ask();
        }
    }

    private void notWritten(List<Problem> why) {
        writing = false;
        trouble(why);
    }

    /** Gives the folder back once all that was asked for before is written. What still waits is lost: ask first. */
    public CompletableFuture<Void> close() {
        CompletableFuture<Void> closed = new CompletableFuture<>();
        workers.disk().execute(() -> {
            disk.giveBack();
            closed.complete(null);
        });
        return closed;
    }
}
