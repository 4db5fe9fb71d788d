package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import covewalk.survey.file.Original;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Which rows of a file are new to the log, and how many are not. */
final class NewRows {

    private final List<RowOutcome> fresh = new ArrayList<>();
    private int sameRows;
    private int sameReadings;

    /**
     * @param rows those that could be read
     * @param imported whether the row was imported before, from this file or another
     */
    NewRows(List<RowOutcome> rows, Predicate<MeterRow> imported, KnownReadings log) {
        for (RowOutcome row : rows) { // first, since each stands for one reading of the log, which is no other row's then
            if (imported.test(row.row())) {
                sameRows++;
                log.takeOne(row.reading().orElseThrow());
            }
        }
        for (RowOutcome row : rows) {
            if (!imported.test(row.row())) {
                take(row, log.takeOne(row.reading().orElseThrow()));
            }
        }
    }

    private void take(RowOutcome row, boolean known) {
        if (known) {
            sameReadings++;
        } else {
            fresh.add(row);
        }
    }

    List<RowOutcome> fresh() {
        return List.copyOf(fresh);
    }

    /** How many rows are in the log already. */
    int there() {
        return sameRows + sameReadings;
    }

    /** @param all how many rows the file has */
    List<Problem> warnings(int all, Original original) {
        List<Problem> warnings = new ArrayList<>();
        if (sameRows > 0) {
            warnings.add(Problem.warning(original.wasThere() ? "import.same-file" : "import.rows-known", sameRows, all, original.name()));
        }
        if (sameReadings > 0) {
            warnings.add(Problem.warning("import.readings-known", sameReadings, all, original.name()));
        }
        return warnings;
    }
}
