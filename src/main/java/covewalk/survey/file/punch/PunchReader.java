package covewalk.survey.file.punch;

import covewalk.survey.Problem;
import covewalk.survey.Typed;
import covewalk.survey.file.disk.Cells;
import covewalk.survey.file.disk.Damage;
import covewalk.survey.file.disk.FileNames;
import covewalk.survey.file.disk.RowBytes;
import covewalk.survey.file.disk.SpreadsheetCell;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code punch.csv}: every whole row becomes a change or a problem; an unfinished last line is not read. */
final class PunchReader {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final RowBytes rows;
    private final Cells cells = new Cells();
    private final List<PunchChange> changes = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<Integer, Registered> registered = new HashMap<>();
    private Optional<PunchHeader> header = Optional.empty();
    private boolean crlf;

    /** Where a number was given to a place. */
    private record Registered(PunchPlace place, int line) {
    }

    private PunchReader(InputStream in) {
        this.rows = new RowBytes(in);
    }

    static PunchContent read(InputStream in) throws IOException {
        return new PunchReader(in).read();
    }

    private PunchContent read() throws IOException {
        if (rows.next()) {
            readHeader();
            crlf = rows.endsWithCrLf();
            readRows();
        }
        Damage damage = rows.restDamage();
        if (damage != null) {
            add(Problem.refusal(damage.key()));
        } else if (rows.rest().length > 0) {
            add(Problem.warning("log.unfinished"));
        }
        return new PunchContent(header, changes, problems, rows.offset(), rows.line() - 1, rows.rest(), crlf);
    }

    private void readHeader() {
        cells.split(rows.buffer(), rows.start(), rows.end());
        if (cells.damage() != null || cells.text(0).isEmpty()) {
            add(Problem.refusal(cells.text(0).isEmpty() ? "log.utf16" : cells.damage().key()));
            return;
        }
        List<String> names = new ArrayList<>();
        for (int cell = 0; cell < cells.count(); cell++) {
            names.add(cells.text(cell).orElse("?"));
        }
        if (names.get(0).startsWith(BYTE_ORDER_MARK)) {
            names.set(0, names.get(0).substring(1));
        }
        List<Problem> wrong = new ArrayList<>();
        header = Optional.of(PunchHeader.of(names, wrong));
        wrong.forEach(this::add);
    }

    /** Where the header is damaged the rows can't be read, but the file is gone through for what is unfinished. */
    private void readRows() throws IOException {
        boolean readable = problems.isEmpty();
        while (rows.next()) {
            if (readable && rows.end() > rows.start()) {
                cells.split(rows.buffer(), rows.start(), rows.end());
                readRow();
            }
        }
    }

    private void readRow() {
        if (cells.damage() != null) {
            add(Problem.refusal(cells.damage().key()).inColumn(header.orElseThrow().name(cells.damagedCell())));
        } else if (cells.count() != header.orElseThrow().width()) {
            add(Problem.refusal("log.row.cells", cells.count(), header.orElseThrow().width()));
        } else {
            int before = problems.size();
            Map<PunchColumn, String> texts = texts();
            int item = item(texts.getOrDefault(PunchColumn.ITEM, ""));
            Optional<PunchPlace> place = place(texts);
            if (problems.size() == before) {
                take(item, place, texts);
            }
        }
    }

    private Map<PunchColumn, String> texts() {
        Map<PunchColumn, String> texts = new EnumMap<>(PunchColumn.class);
        for (PunchColumn column : PunchColumn.values()) {
            if (header.orElseThrow().has(column)) {
                String text = text(column);
                column.check(text).ifPresent(this::add);
                texts.put(column, text);
            }
        }
        texts.values().removeIf(String::isEmpty);
        return texts;
    }

    private String text(PunchColumn column) {
        Optional<String> text = cells.text(header.orElseThrow().cell(column));
        if (text.isEmpty()) {
            add(Problem.refusal(Damage.NOT_UTF8.key()).inColumn(column.code()));
        }
        return SpreadsheetCell.plain(text.orElse("").strip());
    }

    private int item(String digits) {
        boolean whole = digits.matches("[0-9]{1,6}") && Integer.parseInt(digits) > 0;
        if (!whole) {
            add((digits.isEmpty() ? Problem.refusal("log.cell.empty") : Problem.refusal("punch.cell.item", digits, PunchChange.MOST))
                    .inColumn(PunchColumn.ITEM.code()));
        }
        return whole ? Integer.parseInt(digits) : 0;
    }

    private Optional<PunchPlace> place(Map<PunchColumn, String> texts) {
        long given = PunchColumn.PLACE.stream().filter(texts::containsKey).count();
        if (given == 0) {
            return Optional.empty();
        }
        Optional<Typed> position = Typed.of(texts.getOrDefault(PunchColumn.POSITION_M, ""));
        if (given < PunchColumn.PLACE.size()) {
            add(Problem.refusal("punch.place-half").inColumn(PunchColumn.PLACE.stream().filter(column -> !texts.containsKey(column))
                    .findFirst().orElseThrow().code()));
            return Optional.empty();
        }
        return position.map(at -> new PunchPlace(texts.get(PunchColumn.COVE), texts.get(PunchColumn.KIND), at.value(),
                texts.get(PunchColumn.REELS)));
    }

    /** A number never stands for a second place. */
    private void take(int item, Optional<PunchPlace> place, Map<PunchColumn, String> texts) {
        Registered before = registered.get(item);
        if (before != null && place.isPresent() && !before.place().equals(place.get())) {
            add(Problem.refusal("punch.place-changed", item, before.line()).inColumn(PunchColumn.ITEM.code()));
            return;
        }
        place.ifPresent(fault -> registered.putIfAbsent(item, new Registered(fault, rows.line())));
        texts.keySet().retainAll(PunchColumn.STATE);
        changes.add(new PunchChange(item, place, texts));
    }

    private void add(Problem problem) {
        problems.add(problem.at(FileNames.PUNCH, rows.line(), problem.column()));
    }
}
