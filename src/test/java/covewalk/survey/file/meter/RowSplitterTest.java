package covewalk.survey.file.meter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.file.log.LibraryTables;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rows of an import, and their count from the bytes, against those of OpenCSV; where quotation marks are sound, all agree. */
class RowSplitterTest {

    @Test
    void splitsTablesAsTheLibraryDoesButForBlanksAndRowsWithoutInk() {
        for (String table : LibraryTables.all().toList()) {
            List<List<String>> library = LibraryTables.split(table).stream().map(row -> row.stream().map(String::strip).toList())
                    .filter(RowSplitterTest::hasInk).toList();
            assertEquals(library, new RowSplitter(table, ',').all().stream().map(MeterRow::cells).toList(), table);
            assertEquals(library.size(), RowCount.of(table.getBytes(UTF_8), UTF_8, ','), table);
        }
    }

    private static boolean hasInk(List<String> row) {
        return row.stream().anyMatch(cell -> !cell.replaceAll("[\\s,;\"]", "").isEmpty());
    }
}
