package covewalk.survey.file.punch;

import covewalk.survey.Problem;
import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.FileLogChannel;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.LogEnd;
import covewalk.survey.file.disk.NotKept;
import covewalk.survey.file.disk.Outcome;
import covewalk.survey.file.log.UnfinishedLine;
import covewalk.survey.file.seal.SealFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is recorded of the items of a punch list, {@code punch.csv}: only added to, by the one program that holds the
 * folder's lock. Each row says what changes; an empty cell leaves what an earlier row said, and a single hyphen clears
 * it. Which fault a number stands for is kept too, so that no number is ever used twice. For one thread.
 */
public final class PunchLog implements AutoCloseable {

    private final Path file;
    private final PunchHeader header;
    private final String lineEnd;
    private final long wholeBytes;
    private boolean empty;
    private LogEnd end;
    private PunchStates states;

    private PunchLog(Path file, PunchContent content, PunchStates states) {
        this.file = file;
        this.header = content.header().orElseGet(PunchHeader::ofNewLog);
        this.lineEnd = content.crlf() ? "\r\n" : "\n";
        this.wholeBytes = content.wholeBytes();
        this.empty = content.header().isEmpty();
        this.states = states;
    }

    /**
     * How the items stand; needs no lock and writes nothing. No items where the file is missing.
     *
     * @return refused with everything that is wrong where the log is damaged
     */
    public static Outcome<PunchStates> read(Path folder) throws IOException {
        return content(folder).states();
    }

    /**
     * Opens the log of the folder whose lock is held; the file is made when the first row is added. A last line that a
     * power cut left unfinished goes to {@code set-aside.csv}; then a problem that is no refusal says so.
     */
    public static Outcome<PunchLog> open(FolderLock lock) throws IOException {
        if (!lock.isHeld()) {
            throw new IllegalStateException("the folder's lock has been given back");
        }
        PunchContent content = content(lock.folder());
        Outcome<PunchStates> states = content.states();
        if (states.refused()) {
            return Outcome.refused(states.problems());
        }
        PunchLog log = new PunchLog(lock.folder().resolve(FileNames.PUNCH), content, states.value().orElseThrow());
        List<Problem> toKnow = new ArrayList<>();
        if (content.unfinished().length > 0) {
            toKnow.add(UnfinishedLine.setAside(
                    Problem.warning("punch.set-aside").at(FileNames.PUNCH, content.lines() + 1, ""), content.unfinished(), lock));
            log.end().cutUnfinished();
        }
        return Outcome.of(log, toKnow);
    }

    private static PunchContent content(Path folder) throws IOException {
        Path file = folder.resolve(FileNames.PUNCH);
        if (Files.isDirectory(file)) {
            return PunchContent.ofNothing(List.of(Problem.refusal("log.is-folder").at(FileNames.PUNCH, 0, "")));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return PunchReader.read(in);
        } catch (NoSuchFileException nothingYet) {
            return PunchContent.ofNothing(new SealFile(folder).names(FileNames.PUNCH)
                    ? List.of(Problem.refusal("log.lost").at(FileNames.PUNCH, 0, "")) : List.of());
        }
    }

    /** How the items stand now. */
    public PunchStates states() {
        return states;
    }

    /**
     * Adds rows with one write and one flush: when this returns, all are on disk. Line breaks become spaces.
     *
     * @return how the items stand then
     * @throws NotKept where they could not be kept; it says what is on disk
     */
    public PunchStates append(List<PunchChange> changes) throws IOException {
        StringBuilder rows = new StringBuilder(empty ? header.row() + lineEnd : "");
        for (PunchChange change : changes) {
            PunchRow row = new PunchRow(change);
            refuseWithoutColumn(row.missingIn(header));
            rows.append(row.under(header)).append(lineEnd);
        }
        if (!changes.isEmpty()) {
            end().add(CsvText.bytes(rows.toString()));
            empty = false;
            states = states.after(changes);
        }
        return states;
    }

    private static void refuseWithoutColumn(Optional<PunchColumn> missing) throws NotKept {
        if (missing.isPresent()) {
            Problem problem = Problem.refusal("punch.no-column", missing.get().code());
            throw new NotKept(problem.at(FileNames.PUNCH, 1, missing.get().code()), null);
        }
    }

    private LogEnd end() throws IOException {
        if (end == null) {
            end = new LogEnd(() -> FileLogChannel.open(file), wholeBytes, LogEnd.Log.PUNCH);
        }
        return end;
    }

    /** Closes the log; the lock stays with whoever took it. */
    @Override
    public void close() throws IOException {
        if (end != null) {
            end.close();
        }
    }
}
