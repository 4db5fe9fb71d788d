package covewalk.survey.file.meter;

import java.util.List;
import java.util.Optional;

/** When each row of a table was taken, from one column or from two. */
final class RowTimes {

    private final Columns columns;
    private final TakenAt reader;
    private final List<MeterRow> rows;

    RowTimes(MeterTable table) {
        columns = table.columns();
        rows = table.rows();
        reader = new TakenAt(rows.stream().flatMap(row -> written(columns, row).stream()).toList());
    }

    /** As written, date before time; empty where nothing is. */
    static Optional<String> written(Columns columns, MeterRow row) {
        String both = cell(columns, row, MeterField.TAKEN_AT);
        String apart = (cell(columns, row, MeterField.DATE) + " " + cell(columns, row, MeterField.TIME)).strip();
        String text = both.isEmpty() ? apart : both;
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    /** Date and time in ISO 8601; empty where nothing is, or it cannot be told. */
    Optional<String> iso(MeterRow row) {
        return written(columns, row).flatMap(reader::iso);
    }

    /** How many rows say when they were taken in a way that cannot be told. */
    List<MeterRow> untold() {
        return rows.stream().filter(row -> written(columns, row).isPresent() && iso(row).isEmpty()).toList();
    }

    private static String cell(Columns columns, MeterRow row, MeterField field) {
        return columns.first(field).map(column -> row.cell(column.index())).orElse("");
    }
}
