package covewalk.survey.file.log;

import covewalk.survey.Problem;
import covewalk.survey.Typed;
import covewalk.survey.file.disk.Cells;
import covewalk.survey.file.disk.Damage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cells of a log's row by column, and what is wrong with them. A column the log lacks is empty in every row. */
final class RowFields {

    private final LogHeader header;
    private final SharedCells<String> words = new SharedCells<>(text -> Optional.of(text.strip()));
    private final SharedCells<Typed> numbers = new SharedCells<>(Typed::of);
    private final List<Problem> problems = new ArrayList<>();
    private Cells cells = new Cells();

    RowFields(LogHeader header) {
        this.header = header;
    }

    /** Turns to another row; whether it is whole as text and fits the header. */
    boolean take(Cells row) {
        cells = row;
        problems.clear();
        if (row.damage() != null) {
            problems.add(Problem.refusal(row.damage().key()).inColumn(header.name(row.damagedCell())));
        } else if (row.count() != header.width()) {
            problems.add(Problem.refusal("log.row.cells", row.count(), header.width()));
        }
        return problems.isEmpty();
    }

    List<Problem> problems() {
        return problems;
    }

    boolean refused() {
        return !problems.isEmpty() && problems.stream().anyMatch(Problem::refused);
    }

    void add(LogColumn column, Problem problem) {
        problems.add(problem.inColumn(column.code()));
    }

    boolean isBlank(LogColumn column) {
        return !header.has(column) || cells.isBlank(header.cell(column));
    }

    /** The text as it stands. */
    String text(LogColumn column) {
        return isBlank(column) ? "" : checked(column, cells.text(header.cell(column)));
    }

    /** A text that many rows have in common, without spaces around it. */
    String word(LogColumn column) {
        return isBlank(column) ? "" : checked(column, words.of(cells, header.cell(column)));
    }

    /** The text, of which there must be some. */
    String needed(LogColumn column, String text) {
        if (text.isEmpty()) {
            add(column, Problem.refusal("log.cell.empty"));
        }
        return text;
    }

    Optional<Typed> number(LogColumn column) {
        if (isBlank(column)) {
            return Optional.empty();
        }
        Optional<Typed> number = numbers.of(cells, header.cell(column));
        if (number.isEmpty()) {
            add(column, Problem.refusal("log.cell.number", text(column)));
        }
        return number;
    }

    private String checked(LogColumn column, Optional<String> text) {
        if (text.isEmpty()) {
            add(column, Problem.refusal(Damage.NOT_UTF8.key()));
        }
        return text.orElse("?");
    }
}
