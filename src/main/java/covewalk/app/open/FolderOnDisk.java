package covewalk.app.open;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.Survey;
import covewalk.survey.file.DiskWords;
import covewalk.survey.file.Holder;
import covewalk.survey.file.NotKept;
import covewalk.survey.file.Outcome;
import covewalk.survey.file.ReadingLog;
import covewalk.survey.file.SurveyFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
    private ReadingLog log;
    private boolean stopped;

    FolderOnDisk(Path folder, Holder holder, String firstSetUp) {
        this.folder = folder;
        this.holder = holder;
        this.firstSetUp = firstSetUp;
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
            stopped = false;
            return opened.problems();
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    /** A folder that is not there keeps its lock: only when it is back can the lock be given back. */
    private void requireFolder() throws NotWritten {
        if (!Files.isDirectory(folder)) {
            throw new NotWritten(List.of(Problem.refusal("folder.gone")));
        }
    }

    /**
     * Adds readings, those left out that are on disk already: a write may have come through although it seemed to fail.
     *
     * @return all of them with their lines in the log
     */
    List<Reading> append(List<Reading> readings) throws NotWritten {
        return append(readings, log == null || stopped);
    }

    /** The same for a log that was brought here by other hands. */
    List<Reading> appendMissing(List<Reading> readings) throws NotWritten {
        return append(readings, true);
    }

    private List<Reading> append(List<Reading> readings, boolean again) throws NotWritten {
        open();
        try {
            Map<String, Reading> there = again ? onDisk() : Map.of();
            List<Reading> missing = readings.stream().filter(reading -> !there.containsKey(reading.id())).toList();
            List<Reading> kept = new ArrayList<>(readings.stream().map(Reading::id).filter(there::containsKey).map(there::get).toList());
            kept.addAll(log.append(missing));
            requireFolder(); // on some systems a file can be written to after its stick was pulled
            return kept;
        } catch (NotKept notKept) {
            stopped = true;
            throw new NotWritten(List.of(notKept.problem()));
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    <T> T work(DiskWork<T> work) throws NotWritten {
        open();
        try {
            return work.with(log);
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    List<Reading> readings() throws NotWritten {
        try {
            return SurveyFolder.at(folder).read().log();
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    private Map<String, Reading> onDisk() throws IOException {
        return SurveyFolder.at(folder).read().log().stream().collect(Collectors.toMap(Reading::id, Function.identity(), (a, b) -> a));
    }

    void save(Survey survey) throws NotWritten {
        open();
        try {
            List<Problem> problems = SurveyFolder.at(folder).save(survey, log.lock());
            if (!problems.isEmpty()) {
                throw new NotWritten(problems);
            }
        } catch (IOException failed) {
            throw failed(failed);
        }
    }

    private NotWritten failed(IOException failed) {
        stopped = true;
        return new NotWritten(List.of(Problem.refusal("folder.failed", DiskWords.reason(failed))));
    }

    void close() throws IOException {
        if (log != null) {
            ReadingLog last = log;
            log = null;
            last.close();
        }
    }
}
