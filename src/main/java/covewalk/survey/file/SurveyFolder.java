package covewalk.survey.file;

import covewalk.survey.Problem;
import covewalk.survey.SetUp;
import covewalk.survey.Soundness;
import covewalk.survey.Survey;
import covewalk.survey.file.description.DescriptionFile;
import covewalk.survey.file.description.Fields;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.log.LogContent;
import covewalk.survey.file.log.LogReader;
import covewalk.survey.file.log.SetAside;
import covewalk.survey.file.seal.SealFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;

/** A survey's folder. Reading it needs no lock and writes nothing. */
public final class SurveyFolder {

    private final Path folder;

    private SurveyFolder(Path folder) {
        this.folder = folder;
    }

    public static SurveyFolder at(Path folder) {
        return new SurveyFolder(folder);
    }

    /** Whether something of a survey lies there, which a new one must not be mixed with. */
    public static boolean isOccupied(Path folder) {
        return Files.exists(folder.resolve(FileNames.DESCRIPTION)) || Files.exists(folder.resolve(FileNames.LOG));
    }

    /**
     * Reads the description and the log and checks them against each other; tells all that is wrong at once.
     *
     * @throws IOException only where the disk fails
     */
    public ReadSurvey read() throws IOException {
        if (!Files.isDirectory(folder)) {
            return new ReadSurvey(Optional.empty(), List.of(), List.of(Problem.refusal("folder.missing")
                    .at(String.valueOf(folder.getFileName()), 0, "")));
        }
        try {
            ForkJoinTask<Taken> description = ForkJoinPool.commonPool().submit(this::description); // while the log is read
            LogContent log = log(() -> description.join().firstSetUp());
            return checked(description.join(), log, SetAside.count(folder));
        } catch (UncheckedIOException unreadable) {
            throw unreadable.getCause();
        }
    }

    private static ReadSurvey checked(Taken description, LogContent log, int setAside) {
        Optional<Survey> survey = description.survey();
        List<Problem> problems = new ArrayList<>(description.problems());
        List<Problem> ofLog = new ArrayList<>(log.problems());
        survey.ifPresent(known -> Soundness.ofReadings(known, log.readings())
                .forEach(problem -> ofLog.add(problem.at(FileNames.LOG, problem.line(), problem.column()))));
        ofLog.sort(Comparator.comparingInt(Problem::line));
        problems.addAll(ofLog);
        if (setAside > 0) {
            problems.add(Problem.warning("log.rows-set-aside", setAside).at(FileNames.SET_ASIDE, 0, ""));
        }
        return new ReadSurvey(survey, log.readings(), problems);
    }

    /** What is taken of a description: its tree, which may be large, is let go while the log is read. */
    private record Taken(Optional<Survey> survey, List<Problem> problems) {
        String firstSetUp() {
            return survey.map(known -> known.firstSetUp().id()).orElse(SetUp.ASSUMED.id());
        }
    }

    private Taken description() {
        try {
            DescriptionFile.Description description = DescriptionFile.in(folder).read();
            return new Taken(description.survey(), description.problems());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * Saves the description, in one go: a power cut leaves the old one or the new one. Fields of the file that this
     * program does not know stay as they are.
     *
     * @param lock held on this folder
     * @return why nothing was saved: what is there cannot be read and would be lost; empty when it was saved
     */
    public List<Problem> save(Survey survey, FolderLock lock) throws IOException {
        require(lock);
        return DescriptionFile.in(folder).save(survey);
    }

    private void require(FolderLock lock) throws IOException {
        if (!lock.isHeld() || !Files.isSameFile(lock.folder(), folder)) {
            throw new IllegalArgumentException("saving needs the lock of this folder");
        }
    }

    /**
     * What another program made of the description since it was read, or saved, here. Compared is what would be written, so
     * that other spaces or another order of fields are no change.
     *
     * @param known as it was on disk when this program looked last
     * @return what is on disk now, sound or not, where it says something else; empty too where it is gone or cannot be read
     */
    public Optional<Survey> otherThan(Survey known) throws IOException {
        return DescriptionFile.in(folder).otherThan(known);
    }

    /** Keeps the description that is on disk, byte for byte, in {@code originals/}, before another takes its place. */
    public Original keepAside(FolderLock lock) throws IOException {
        require(lock);
        return Originals.in(folder).keep(folder.resolve(FileNames.DESCRIPTION), lock);
    }

    /** Keeps a description that will not be saved in {@code originals/}. */
    public Original keepAside(Survey survey, FolderLock lock) throws IOException {
        require(lock);
        return Originals.in(folder).keep(DescriptionFile.in(folder).written(survey), FileNames.DESCRIPTION, lock);
    }

    /** A log that is not there was lost where a seal names it. */
    private LogContent log(Supplier<String> firstSetUp) throws IOException {
        if (Files.isDirectory(folder.resolve(FileNames.LOG))) {
            return LogContent.ofNothing().with(Problem.refusal("log.is-folder").at(FileNames.LOG, 0, ""));
        }
        try (InputStream in = Files.newInputStream(folder.resolve(FileNames.LOG))) {
            return LogReader.read(in, firstSetUp);
        } catch (NoSuchFileException nothingReadYet) {
            return new SealFile(folder).names(FileNames.LOG) ? LogContent.ofNothing().with(Problem.refusal("log.lost").at(FileNames.LOG, 0, ""))
                    : LogContent.ofNothing();
        }
    }
}
