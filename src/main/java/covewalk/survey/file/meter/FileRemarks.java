package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.Reading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a user should know of a file that was taken: one remark for each kind of thing, however many rows it concerns. */
final class FileRemarks {

    private final MeterTable table;
    private final ImportOptions options;
    private final List<RowOutcome> rows;
    private final Optional<LocalDate> visit;

    /** @param visit the day of the walk, where it is known */
    FileRemarks(MeterTable table, ImportOptions options, List<RowOutcome> rows, Optional<LocalDate> visit) {
        this.table = table;
        this.options = options;
        this.rows = rows;
        this.visit = visit;
    }

    List<Problem> warnings() {
        List<Problem> warnings = new ArrayList<>();
        position().ifPresent(warnings::add);
        warnings.addAll(new ColourRemarks(rows, table.columns()).warnings());
        dates().ifPresent(warnings::add);
        otherDay().ifPresent(warnings::add);
        luminance().ifPresent(warnings::add);
        return warnings;
    }

    /** Columns nobody knows. */
    List<Problem> questions() {
        return table.columns().strange().stream()
                .map(title -> Problem.warning("import.strange-column", MeterRow.excerpt(title)).inColumn(MeterRow.excerpt(title))).toList();
    }

    private Optional<Problem> position() {
        Optional<Column> column = table.columns().first(MeterField.POSITION);
        if (column.isPresent() && !(options.stations() instanceof Stations.Unsaid)) {
            return Optional.of(Problem.warning("import.positions-in-file", column.get().title()));
        }
        return column.filter(found -> found.unit() == MeterUnit.NONE)
                .map(found -> Problem.warning("import.position-unit", found.title()).inColumn(found.title()));
    }

    private Optional<Problem> dates() {
        List<MeterRow> untold = new RowTimes(table).untold();
        return untold.isEmpty() ? Optional.empty()
                : Optional.of(Problem.warning("import.dates", untold.size(), rows.size(),
                        MeterRow.excerpt(RowTimes.written(table.columns(), untold.get(0)).orElse(""))).at("", untold.get(0).line(), ""));
    }

    private Optional<Problem> otherDay() {
        List<Reading> readings = rows.stream().flatMap(row -> row.reading().stream()).toList();
        return visit.flatMap(day -> new DayRemark(day).of(readings));
    }

    private Optional<Problem> luminance() {
        boolean only = table.columns().first(MeterField.LUX).isEmpty();
        return table.columns().first(MeterField.LUMINANCE).filter(column -> only)
                .map(column -> Problem.warning("import.luminance", column.title()).inColumn(column.title()));
    }
}
