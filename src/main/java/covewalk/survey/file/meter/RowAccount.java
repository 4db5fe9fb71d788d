package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import java.util.Optional;

/** Checks that no row was lost: rows in the bytes are rows before the readings and rows of readings. */
final class RowAccount {

    private RowAccount() {
    }

    /** What to tell the user where the rows that were read are not those that an independent count finds. */
    static Optional<Problem> disagreement(byte[] bytes, MeterTable table) {
        int counted = RowCount.of(bytes, table.text().charset(), table.separator());
        int read = table.otherRows() + table.rows().size();
        return counted == read ? Optional.empty() : Optional.of(Problem.refusal("import.count", counted, read));
    }
}
