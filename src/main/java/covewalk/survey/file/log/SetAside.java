package covewalk.survey.file.log;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.DurableFile;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.FolderLock;
import covewalk.survey.file.disk.RowBytes;
import covewalk.survey.file.disk.SpreadsheetCell;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Keeps rows that could not be read, with the reason, in {@code set-aside.csv}: only ever added to. A row that a spreadsheet
 * would run as a formula has an apostrophe in front; as it came it lies in {@code originals/}.
 */
public final class SetAside {

    private static final String HEADER = "source,line,column,reason,row";

    private final Path file;

    private SetAside(Path file) {
        this.file = file;
    }

    /** The rows set aside of the survey whose folder is locked. */
    public static SetAside of(FolderLock lock) {
        return new SetAside(lock.folder().resolve(FileNames.SET_ASIDE));
    }

    /**
     * Adds rows and flushes them; when this returns they are on disk. An unfinished last line, left by a power cut, is
     * ended first so that the new rows stay readable.
     */
    public void add(List<SetAsideRow> rows) throws IOException {
        if (rows.isEmpty()) {
            return;
        }
        try (FileChannel channel = FileChannel.open(file, READ, WRITE, CREATE)) {
            long end = channel.size();
            ByteBuffer bytes = ByteBuffer.wrap(CsvText.bytes(lead(channel, end) + lines(rows)));
            long at = end;
            while (bytes.hasRemaining()) {
                at += channel.write(bytes, at);
            }
            channel.force(true);
        }
        DurableFile.flushFolder(file.toAbsolutePath().getParent());
    }

    /** How many rows lie there, in a folder that need not be locked. */
    public static int count(Path folder) throws IOException {
        Path file = folder.resolve(FileNames.SET_ASIDE);
        if (!Files.isRegularFile(file)) {
            return 0;
        }
        try (InputStream in = Files.newInputStream(file)) {
            RowBytes rows = new RowBytes(in);
            int count = 0;
            while (rows.next()) {
                count++;
            }
            return Math.max(0, count - 1); // without the header
        }
    }

    private static String lead(FileChannel channel, long end) throws IOException {
        if (end == 0) {
            return HEADER + "\n";
        }
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, end - 1);
        return last.get(0) == '\n' ? "" : "\n";
    }

    private static String lines(List<SetAsideRow> rows) {
        StringBuilder lines = new StringBuilder();
        for (SetAsideRow row : rows) {
            lines.append(CsvText.row(List.of(SpreadsheetCell.harmless(row.source()), Integer.toString(row.line()),
                    SpreadsheetCell.harmless(row.column()), SpreadsheetCell.harmless(row.reason()),
                    SpreadsheetCell.harmless(row.row())))).append('\n');
        }
        return lines.toString();
    }
}
