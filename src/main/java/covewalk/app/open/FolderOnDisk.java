package covewalk.app.open;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.disk.DiskWords;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.NotKept;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.ReadSurvey;
import covewalk.survey.file.log.ReadingLog;
import covewalk.survey.file.log.ReadingNumbers;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A survey's folder as its one writer sees it. A stick that was pulled may come back: each call opens anew what had to
 * be given up. For the thread that writes, and no other.
 */
final class FolderOnDisk {

    private final Path folder;
    private final Holder holder;
    private final String firstSetUp;
    private final ReadingNumbers numbers = new ReadingNumbers();
    /** Ids given anew in an append that was not known to succeed; the next one must not give others. */
    private final Map<String, String> renumbered = new HashMap<>();
    private ReadingLog log;
    private boolean stopped;
    /**
     * Whether description or log may hold what nobody here knows: of other hands, or of a write that only seemed to fail. Until
     * both were looked at and nothing else was found.
     */
    private boolean unread;
    /** The description that this program saved last; null where another one was found since. */
    private Survey saved;

    FolderOnDisk(Path folder, Holder holder, String firstSetUp) {
        this.folder = folder;
        this.holder = holder;
        this.firstSetUp = firstSetUp;
    }

    /** Numbers for readings: those on the screen and those of an import come from here. */
    ReadingNumbers numbers() {
        return numbers;
    }

    /**
     * Takes the lock and opens the log, where that is not so yet.
     *
     * @return what the user should know although it went well
     */
    List<Problem> open() throws NotWritten {
        if (log != null && !stopped) {
            return List.of();
        }
        requireFolder();
        try {
            close();
            Outcome<ReadingLog> opened = ReadingLog.open(folder, holder, firstSetUp);
            if (opened.refused()) {
                throw new NotWritten(opened.problems());
            }
            log = opened.value().orElseThrow();
            log.share(numbers);
            unread = true;
            stopped = false;
            return opened.problems();
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    /** A folder that is not there keeps its lock: only when it is back can the lock be given back. */
    private void requireFolder() throws NotWritten {
        if (!Files.isDirectory(folder)) {
            stopped = true;
            throw new NotWritten(List.of(Problem.refusal("folder.gone")));
        }
    }

    /** Reads what is there, and does not take it for known. */
    ReadSurvey read() throws IOException {
        return SurveyFolder.at(folder).read();
    }

    /** Description and log were looked at, and are held as they are there: under the lock all of it is known from now on. */
    void known() {
        unread = false;
    }

    /**
     * Adds readings, those left out that are on disk already: a write may have come through although it seemed to fail.
     * What has an id that another reading has gets the next one. Of none at all the log is only read anew.
     */
    Kept append(List<Reading> readings) throws NotWritten {
        open();
        try {
            boolean compare = readings.isEmpty() || unread || readings.stream().anyMatch(reading -> log.holds(reading.id()));
            Optional<List<Reading>> before = compare ? Optional.of(readings()) : Optional.empty();
            Numbering numbering = new Numbering(log, byId(before.orElse(List.of())), renumbered);
            List<Reading> settled = numbering.settle(readings);
            Map<String, Reading> added = byId(log.append(numbering.missing()));
            requireFolder(); // on some systems a file can be written to after its stick was pulled
            renumbered.clear();
            return new Kept(before, settled.stream().map(reading -> added.getOrDefault(reading.id(), reading)).toList());
        } catch (NotKept notKept) {
            stopped = true;
            throw new NotWritten(List.of(notKept.problem()));
        }
    }

    <T> T work(DiskWork<T> work) throws NotWritten {
        requireFolder();
        open();
        try {
            return work.with(log);
        } catch (NotKept notKept) {
            stopped = true;
            throw new NotWritten(List.of(notKept.problem()));
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    /** The whole log; where a part of it cannot be taken, none of it: what is held here must not shrink to the rest. */
    List<Reading> readings() throws NotWritten {
        try {
            ReadSurvey read = read();
            if (read.refused()) {
                throw new NotWritten(read.problems().stream().filter(Problem::refused).toList());
            }
            return read.log();
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    private static Map<String, Reading> byId(List<Reading> readings) {
        return readings.stream().collect(Collectors.toMap(Reading::id, Function.identity(), (a, b) -> a));
    }

    /** What is there is in doubt: it is opened anew before anything more is written. */
    void doubt() {
        stopped = true;
    }

    /** Whether others may have written since this program looked last. */
    boolean isUnread() {
        return unread;
    }

    void save(Survey survey) throws NotWritten {
        List<Problem> problems = work(open -> SurveyFolder.at(folder).save(survey, open.lock()));
        if (!problems.isEmpty()) {
            throw new NotWritten(problems);
        }
        saved = survey;
    }

    /**
     * The description that another program saved meanwhile; empty where it is {@code known}, or what is to be saved anyway, or
     * what was saved from here before {@code known} could be told of it.
     */
    Optional<Survey> otherThan(Survey known, Survey described) throws NotWritten {
        Optional<Survey> other = work(open -> {
            Optional<Survey> there = SurveyFolder.at(folder).otherThan(known);
            for (Survey ours : saved == null ? List.of(described) : List.of(described, saved)) {
                there = there.isEmpty() ? there : SurveyFolder.at(folder).otherThan(ours);
            }
            return there;
        });
        if (other.isPresent()) {
            saved = null;
            unread = true; // until the one on disk is the one held here it is looked at before every write
        }
        return other;
    }

    /** Whether another program wrote, in description or log, what is not held here. */
    boolean holdsOtherThan(Survey known, Survey described, List<Reading> log) throws NotWritten {
        return otherThan(known, described).isPresent() || unread && !readings().equals(log);
    }

    /** Why readings, and those that are on disk, cannot stand in a description that is not the one on disk; empty where they can. */
    List<Problem> refusals(List<Reading> readings, Survey described) throws NotWritten {
        Map<String, Reading> all = new LinkedHashMap<>();
        List<Reading> there = readings();
        there.forEach(reading -> all.put(reading.id(), reading));
        List<Problem> refusals = Refusals.of(described, there);
        readings.forEach(reading -> all.put(reading.id(), reading)); // one that came on disk already does not stand there twice
        return refusals.isEmpty() ? Refusals.of(described, List.copyOf(all.values())) : refusals;
    }

    /** Another program may have put readings on disk that were not known when a description was made. */
    void requireFit(List<Reading> readings, Survey described) throws NotWritten {
        open();
        List<Problem> refusals = refusals(readings, described);
        if (!refusals.isEmpty()) {
            throw new NotWritten(refusals);
        }
    }

    /** Keeps what is on disk in {@code originals/}. */
    void keepTheirsAside() throws NotWritten {
        work(open -> SurveyFolder.at(folder).keepAside(open.lock()));
    }

    /** Keeps what was described here in {@code originals/}. */
    void keepAside(Survey ours) throws NotWritten {
        work(open -> SurveyFolder.at(folder).keepAside(ours, open.lock()));
    }

    private NotWritten failed(IOException failed) {
        stopped = true;
        return new NotWritten(List.of(Problem.refusal("folder.failed", DiskWords.reason(failed))));
    }

    /** Closes the log and gives the lock back, as far as that can be done. */
    void giveBack() {
        try {
            close();
        } catch (IOException gone) {
            // the folder went away, and its lock with it
        }
    }

    private void close() throws IOException {
        if (log != null) {
            ReadingLog last = log;
            log = null;
            last.close();
        }
    }
}
