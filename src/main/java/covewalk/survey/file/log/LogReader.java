package covewalk.survey.file.log;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import covewalk.survey.file.disk.Cells;
import covewalk.survey.file.disk.Damage;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.RowBytes;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads a reading log: every whole row becomes a reading or a problem. An unfinished last line is not read; it is what
 * a power cut leaves, or a row that another program is writing just now.
 */
public final class LogReader {

    private final RowBytes rows;
    private final Supplier<String> firstSetUp;
    private final Cells cells = new Cells();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private Optional<LogHeader> header = Optional.empty();
    private boolean crlf;

    private LogReader(InputStream in, Supplier<String> firstSetUp) {
        this.rows = new RowBytes(in);
        this.firstSetUp = firstSetUp;
    }

    /** @param firstSetUp the set-up of rows that name none; asked only when there is one */
    public static LogContent read(InputStream in, Supplier<String> firstSetUp) throws IOException {
        return new LogReader(in, firstSetUp).read();
    }

    private LogContent read() throws IOException {
        if (rows.next()) {
            readHeader();
            crlf = rows.endsWithCrLf();
            readRows();
        }
        Damage damage = rows.restDamage();
        if (damage != null) {
            add(Problem.refusal(damage.key()), rows.line());
        } else if (rows.rest().length > 0) {
            add(Problem.warning("log.unfinished"), rows.line());
        }
        return new LogContent(header, readings, problems, rows.offset(), rows.line() - 1, rows.rest(), crlf);
    }

    private void readHeader() {
        int start = rows.start() + byteOrderMark();
        if (rows.end() >= start + 2 && (rows.buffer()[start] & 0xfe) == 0xfe) {
            add(Problem.refusal("log.utf16"), 1);
            return;
        }
        cells.split(rows.buffer(), start, rows.end());
        List<String> names = new ArrayList<>();
        for (int cell = 0; cell < cells.count(); cell++) {
            names.add(cells.text(cell).orElse("?"));
        }
        List<Problem> wrong = new ArrayList<>();
        if (cells.damage() != null) {
            wrong.add(Problem.refusal(cells.damage().key()));
        } else {
            header = Optional.of(LogHeader.of(names, wrong));
        }
        wrong.forEach(problem -> add(problem, 1));
    }

    /** Some editors put one at the beginning of UTF-8. */
    private int byteOrderMark() {
        byte[] buffer = rows.buffer();
        int at = rows.start();
        boolean mark = rows.end() - at >= 3 && buffer[at] == (byte) 0xef && buffer[at + 1] == (byte) 0xbb
                && buffer[at + 2] == (byte) 0xbf;
        return mark ? 3 : 0;
    }

    /** Where the header is damaged the rows can't be read, but the file is gone through for what is unfinished. */
    private void readRows() throws IOException {
        boolean readable = problems.isEmpty();
        RowReader reader = readable ? new RowReader(header.orElseThrow(), firstSetUp) : null;
        while (rows.next()) {
            if (readable && rows.end() > rows.start()) {
                cells.split(rows.buffer(), rows.start(), rows.end());
                reader.read(cells, rows.line()).ifPresent(readings::add);
                for (Problem problem : reader.problems()) {
                    add(problem, rows.line());
                }
            }
        }
    }

    private void add(Problem problem, int line) {
        problems.add(problem.at(FileNames.LOG, line, problem.column()));
    }
}
