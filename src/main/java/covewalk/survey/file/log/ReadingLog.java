package covewalk.survey.file.log;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.file.disk.ChannelStream;
import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.FileLogChannel;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.Holder;
import covewalk.survey.file.disk.LogChannel;
import covewalk.survey.file.disk.LogEnd;
import covewalk.survey.file.disk.NotKept;
import covewalk.survey.file.disk.Outcome;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The reading log, open to be added to by the one program that holds the folder's lock. Nothing in it is ever written
 * over. For one thread.
 */
public final class ReadingLog implements AutoCloseable {

    private final FolderLock lock;
    private final LogHeader header;
    private final LogEnd end;
    private final String lineEnd;
    private final String firstSetUp;
    private final Set<String> ids = new HashSet<>();
    private ReadingNumbers numbers = new ReadingNumbers();
    private int lines;

    private ReadingLog(FolderLock lock, LogContent content, LogEnd end, String firstSetUp) {
        this.lock = lock;
        this.header = content.header().orElseGet(LogHeader::ofNewLog);
        this.end = end;
        this.lineEnd = content.crlf() ? "\r\n" : "\n";
        this.firstSetUp = firstSetUp;
        this.lines = content.lines();
        content.readings().forEach(reading -> take(reading.id()));
    }

    /**
     * Takes the folder's lock and opens its log, or says who holds the lock or what is wrong with the log. A last line
     * that a power cut left unfinished goes to {@code set-aside.csv}; then a problem that is no refusal says so.
     *
     * @param firstSetUp the set-up of rows that name none: the first of the survey
     */
    public static Outcome<ReadingLog> open(Path folder, Holder holder, String firstSetUp) throws IOException {
        Outcome<FolderLock> lock = FolderLock.take(folder, holder);
        if (lock.refused()) {
            return Outcome.refused(lock.problems());
        }
        Path log = folder.resolve(FileNames.LOG);
        return open(lock.value().orElseThrow(), () -> FileLogChannel.open(log), firstSetUp);
    }

    static Outcome<ReadingLog> open(FolderLock lock, LogChannel.Opener opener, String firstSetUp) throws IOException {
        boolean open = false;
        try {
            Outcome<ReadingLog> log = openLocked(lock, opener, firstSetUp);
            open = !log.refused();
            return log;
        } finally {
            if (!open) {
                lock.close();
            }
        }
    }

    private static Outcome<ReadingLog> openLocked(FolderLock lock, LogChannel.Opener opener, String firstSetUp)
            throws IOException {
        LogContent content = contentOf(opener, firstSetUp);
        if (content.refused()) {
            return Outcome.refused(content.problems());
        }
        LogEnd end = new LogEnd(opener, content.wholeBytes());
        try {
            return start(lock, content, end, firstSetUp);
        } catch (IOException failed) {
            end.close();
            throw failed;
        }
    }

    /** Leaves a log that ends with a whole row, be it the header. */
    private static Outcome<ReadingLog> start(FolderLock lock, LogContent content, LogEnd end, String firstSetUp)
            throws IOException {
        List<Problem> toKnow = new ArrayList<>();
        if (content.unfinished().length > 0) {
            toKnow.add(UnfinishedLine.setAside(
                    Problem.warning("log.set-aside").at(FileNames.LOG, content.lines() + 1, ""), content.unfinished(), lock));
            end.cutUnfinished();
        }
        ReadingLog log = new ReadingLog(lock, content, end, firstSetUp);
        if (content.header().isEmpty()) {
            end.add(CsvText.bytes(log.header.row() + log.lineEnd));
            log.lines = 1;
        }
        return Outcome.of(log, toKnow);
    }

    private static LogContent contentOf(LogChannel.Opener opener, String firstSetUp) throws IOException {
        try (LogChannel channel = opener.open(); InputStream in = new ChannelStream(channel)) {
            return LogReader.read(in, () -> firstSetUp);
        }
    }

    /** The lock under which this log is written; whatever else is written in the folder needs it too. */
    public FolderLock lock() {
        return lock;
    }

    /** An id that no reading has and that was not given out before: the next number. */
    public String nextId() {
        return numbers.next();
    }

    /** From now on gives out numbers of these, of which others may take some too: nobody gets one twice. */
    public void share(ReadingNumbers shared) {
        ids.forEach(shared::passOver);
        numbers = shared;
    }

    /** Whether a reading of this log has the id. */
    public boolean holds(String id) {
        return ids.contains(id);
    }

    /** Whether both give the same row: then one of them was read from the row that the other was written to. */
    public boolean alike(Reading one, Reading other) {
        return new LogRow(one).under(header).equals(new LogRow(other).under(header));
    }

    /** As {@link #append(List)}. */
    public List<Reading> append(Reading... readings) throws NotKept {
        return append(Arrays.asList(readings));
    }

    /**
     * Adds readings with one write and one flush: when this returns, all are on disk. Line breaks in a note become
     * spaces.
     *
     * @return the readings with the lines they have in the log
     * @throws NotKept where they could not be kept; it says what is on disk
     * @throws IllegalArgumentException where an id is in use
     */
    public List<Reading> append(List<Reading> readings) throws NotKept {
        checkIds(readings);
        StringBuilder rows = new StringBuilder();
        for (Reading reading : readings) {
            LogRow row = new LogRow(reading);
            refuseWithoutColumn(row.missingIn(header, firstSetUp));
            rows.append(row.under(header)).append(lineEnd);
        }
        end.add(CsvText.bytes(rows.toString()));
        readings.forEach(reading -> take(reading.id()));
        return readings.stream().map(reading -> reading.atLine(++lines)).toList();
    }

    private void checkIds(List<Reading> readings) {
        Set<String> fresh = new HashSet<>();
        for (Reading reading : readings) {
            if (reading.id().isBlank() || ids.contains(reading.id()) || !fresh.add(reading.id())) {
                throw new IllegalArgumentException("reading " + reading.id() + " is in the log: take the next id");
            }
        }
    }

    private static void refuseWithoutColumn(Optional<LogColumn> missing) throws NotKept {
        if (missing.isPresent()) {
            Problem problem = Problem.refusal("log.no-column", missing.get().code());
            throw new NotKept(problem.at(FileNames.LOG, 1, missing.get().code()), null);
        }
    }

    private void take(String id) {
        ids.add(id);
        numbers.passOver(id);
    }

    /** Closes the log and gives the lock back. */
    @Override
    public void close() throws IOException {
        try {
            end.close();
        } finally {
            lock.close();
        }
    }
}
