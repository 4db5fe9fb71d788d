package covewalk.app.open;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.DiskWords;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.SurveyFolder;
import covewalk.survey.file.TakenAlong;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Opens surveys, and begins new ones. What comes of it is told on the screen's thread. */
public final class Opener {

    private final Workers workers;
    private final Supplier<Holder> holder;

    /** @param holder who writes, from now on, in a folder that is opened */
    public Opener(Workers workers, Supplier<Holder> holder) {
        this.workers = workers;
        this.holder = holder;
    }

    /**
     * Reads a survey and takes its lock. Where the lock or the disk refuses, the survey is open all the same, and says in
     * {@link OpenSurvey#troubleProperty()} why nothing can be written.
     *
     * @param told what was opened, or all that is wrong with the folder
     */
    public void open(Path folder, Consumer<Outcome<OpenSurvey>> told) {
        open(folder, false, told);
    }

    /** @param correctDrift whether a drift that the reference spot shows is taken off from the first judgement on */
    public void open(Path folder, boolean correctDrift, Consumer<Outcome<OpenSurvey>> told) {
        attempt(correctDrift, told, () -> {
            ReadSurvey read = SurveyFolder.at(folder).read();
            return read.refused() ? refused(read) : lockAndOpen(folder, read);
        });
    }

    /**
     * Begins a survey in a folder of its own.
     *
     * @param folder not there yet, or empty
     * @param readings to begin with
     */
    public void create(Path folder, Survey survey, List<Reading> readings, Consumer<Outcome<OpenSurvey>> told) {
        inNewFolder(folder, false, told, () -> begin(folder, survey, readings, List.of()));
    }

    /**
     * Goes on with a survey in a folder of its own, since the one before has gone or takes nothing any more. What can still be
     * read there is taken along as it is, so that seals and numbers of items hold; the rest is written anew.
     *
     * @param from the folder before, which stays as it is
     * @param folder not there yet, or empty
     * @param readings all, also those that are in no log yet
     * @param correctDrift whether a drift that the reference spot shows is taken off, as it was before
     */
    public void keepElsewhere(Path from, Path folder, Survey survey, List<Reading> readings, boolean correctDrift,
                              Consumer<Outcome<OpenSurvey>> told) {
        inNewFolder(folder, correctDrift, told, () -> {
            TakenAlong along = new TakenAlong(from, folder);
            List<String> left = along.whatLiesBeside();
            List<Problem> toKnow = left.isEmpty() ? List.of() : List.of(Problem.warning("folder.left-behind", String.join(", ", left)));
            if (along.whatIsSealed()) {
                try {
                    return begin(folder, survey, readings, toKnow);
                } catch (NotWritten damagedOrNoRoom) {
                    along.leaveWhatIsSealed();
                }
            }
            return begin(folder, survey, readings, toKnow);
        });
    }

    /** What is done in a folder. */
    @FunctionalInterface
    private interface Attempt {
        Supplier<Outcome<OpenSurvey>> outcome() throws IOException, NotWritten;
    }

    private void inNewFolder(Path folder, boolean correctDrift, Consumer<Outcome<OpenSurvey>> told, Attempt beginning) {
        attempt(correctDrift, told, () -> {
            Files.createDirectories(folder);
            return SurveyFolder.isOccupied(folder) ? refused(List.of(Problem.refusal("folder.occupied", folder.getFileName())))
                    : beginning.outcome();
        });
    }

    /** Whatever comes of it, it is told: who asked waits for it and asks for nothing else meanwhile. */
    private void attempt(boolean correctDrift, Consumer<Outcome<OpenSurvey>> told, Attempt attempt) {
        workers.disk().execute(() -> {
            Supplier<Outcome<OpenSurvey>> outcome = outcome(attempt);
            workers.screen().execute(() -> {
                Outcome<OpenSurvey> opened = outcome.get();
                opened.value().ifPresent(survey -> survey.judge(correctDrift));
                told.accept(opened);
            });
        });
    }

    private static Supplier<Outcome<OpenSurvey>> outcome(Attempt attempt) {
        try {
            return attempt.outcome();
        } catch (NotWritten notWritten) {
            return refused(notWritten.problems());
        } catch (IOException failed) {
            return refused(List.of(Problem.refusal("folder.failed", DiskWords.reason(failed))));
        } catch (RuntimeException | Error fault) {
            return refused(NotWritten.byFault(fault).problems());
        }
    }

    private Supplier<Outcome<OpenSurvey>> begin(Path folder, Survey survey, List<Reading> readings, List<Problem> toKnow)
            throws NotWritten {
        FolderOnDisk disk = new FolderOnDisk(folder, holder.get(), survey.firstSetUp().id());
        boolean begun = false;
        try {
            disk.save(survey);
            List<Reading> log = disk.append(readings).after(List.of());
            disk.known();
            begun = true;
            return open(folder, survey, log, disk, toKnow, List.of());
        } finally {
            if (!begun) {
                disk.giveBack();
            }
        }
    }

    /** Reads once more under the lock: until then another program may have added to the log. */
    private Supplier<Outcome<OpenSurvey>> lockAndOpen(Path folder, ReadSurvey before) throws IOException {
        Survey survey = before.survey().orElseThrow();
        FolderOnDisk disk = new FolderOnDisk(folder, holder.get(), survey.firstSetUp().id());
        List<Problem> toKnow;
        try {
            toKnow = new ArrayList<>(disk.open());
        } catch (NotWritten notWritten) {
            return open(folder, survey, before.log(), disk, before.warnings(), notWritten.problems());
        }
        boolean opened = false;
        try {
            ReadSurvey now = disk.read();
            opened = !now.refused();
            disk.known();
            toKnow.addAll(now.warnings());
            return opened ? open(folder, now.survey().orElseThrow(), now.log(), disk, toKnow, List.of()) : refused(now);
        } finally {
            if (!opened) {
                disk.giveBack(); // else this program would find the survey locked by itself
            }
        }
    }

    private Supplier<Outcome<OpenSurvey>> open(Path folder, Survey survey, List<Reading> log, FolderOnDisk disk,
                                               List<Problem> toKnow, List<Problem> trouble) {
        return () -> {
            OpenSurvey open = new OpenSurvey(folder, survey, log, disk, workers);
            open.know(toKnow);
            open.trouble(trouble);
            return new Outcome<>(Optional.of(open), List.of());
        };
    }

    private static Supplier<Outcome<OpenSurvey>> refused(ReadSurvey read) {
        return refused(read.problems().stream().filter(Problem::refused).toList());
    }

    private static Supplier<Outcome<OpenSurvey>> refused(List<Problem> why) {
        return () -> new Outcome<>(Optional.empty(), why);
    }
}
