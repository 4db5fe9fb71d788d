package covewalk.report.data;

import com.opencsv.CSVWriter;
import covewalk.survey.file.disk.SpreadsheetCell;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A table by RFC 4180, its lines ending in CR LF, for spreadsheets: a text that a spreadsheet would run as a formula
 * gets an apostrophe in front (OWASP, CSV injection), a number never does.
 */
final class CsvTable {

    private final StringWriter out = new StringWriter();
    private final CSVWriter writer = new CSVWriter(out, ',', '"', '"', "\r\n");
    private List<String> row = new ArrayList<>();

    CsvTable text(String text) {
        row.add(SpreadsheetCell.harmless(text));
        return this;
    }

    /** Rounded to this many decimals, with a point. */
    CsvTable number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        row.add(rounded.toPlainString());
        return this;
    }

    /** Cut to six decimals, not rounded: it is never overstated. */
    CsvTable confidence(double value) {
        row.add(BigDecimal.valueOf(value).setScale(6, RoundingMode.DOWN).toPlainString());
        return this;
    }

    /** An empty cell where there is none. */
    CsvTable number(OptionalDouble value, int decimals) {
        if (value.isEmpty()) {
            row.add("");
            return this;
        }
        return number(value.getAsDouble(), decimals);
    }

    void endRow() {
        writer.writeNext(row.toArray(String[]::new), false);
        row = new ArrayList<>();
    }

    String written() {
        try {
            writer.flush();
        } catch (IOException never) { // it writes to memory
            throw new UncheckedIOException(never);
        }
        return out.toString();
    }
}
