package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Typed;
import java.util.Optional;

/** The number cells of one row of a table. */
final class NumberCells {

    private final Columns columns;
    private final DecimalMark mark;
    private final MeterRow row;

    NumberCells(Columns columns, DecimalMark mark, MeterRow row) {
        this.columns = columns;
        this.mark = mark;
        this.row = row;
    }

    /** The cell as written, empty where there is no such column. */
    String text(MeterField field) {
        return columns.first(field).map(column -> row.cell(column.index())).orElse("");
    }

    boolean isBlank(MeterField field) {
        return text(field).isEmpty();
    }

    Optional<Typed> number(MeterField field) {
        return columns.first(field).flatMap(column -> CellNumber.read(row.cell(column.index()), mark, column.unit()));
    }

    /** A length in metres; a column without a unit is in metres. */
    Optional<Typed> metres(MeterField field) {
        return columns.first(field).flatMap(column -> Length.metres(row.cell(column.index()), mark,
                column.unit() == MeterUnit.NONE ? MeterUnit.METRE : column.unit()));
    }

    String title(MeterField field) {
        return columns.first(field).map(Column::title).orElse(field.code());
    }

    /** The title of the column for which the log has this name. */
    String titleOf(String logColumn) {
        return columns.titleOf(logColumn);
    }

    MeterUnit unit(MeterField field) {
        return columns.first(field).map(Column::unit).orElse(MeterUnit.NONE);
    }

    /** What is wrong with a cell that holds something and no number. */
    Problem notANumber(MeterField field) {
        String found = MeterRow.excerpt(text(field));
        boolean over = CellNumber.isMark(text(field));
        return Problem.refusal(over ? "import.cell.no-value" : "import.cell.no-number", found).inColumn(title(field));
    }
}
