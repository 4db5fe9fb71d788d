package covewalk.survey.file.convert;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.file.log.LibraryTables;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The cells that {@code convert} finds against those of OpenCSV. */
class RowCellsTest {

    @Test
    void splitsTablesAsTheLibraryDoes() {
        for (String table : LibraryTables.all().toList()) {
            assertEquals(LibraryTables.split(table), ours(table.getBytes(UTF_8)), table);
        }
    }

    private static List<List<String>> ours(byte[] table) {
        List<List<String>> rows = new ArrayList<>();
        RowCells cells = new RowCells(',');
        for (int at = 0; at < table.length;) {
            int end = cells.split(table, at, table.length, true);
            List<String> row = new ArrayList<>();
            for (int cell = 0; cell < cells.count(); cell++) {
                row.add(withoutQuotes(new String(table, cells.start(cell), cells.end(cell) - cells.start(cell), UTF_8)));
            }
            rows.add(row);
            at = end + (table[end] == '\r' ? 2 : 1);
        }
        return rows;
    }

    private static String withoutQuotes(String asTyped) {
        return asTyped.startsWith("\"") ? asTyped.substring(1, asTyped.length() - 1).replace("\"\"", "\"") : asTyped;
    }
}
