package covewalk.survey.file.log;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import covewalk.survey.file.disk.Cells;
import covewalk.survey.file.disk.RowBytes;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rows and cells of the log against those of OpenCSV. */
class RowsAgainstLibraryTest {

    @Test
    void splitsTablesAsTheLibraryDoes() throws IOException {
        for (String table : LibraryTables.all().toList()) {
            assertEquals(LibraryTables.split(table), ours(table), table);
        }
    }

    private static List<List<String>> ours(String text) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        RowBytes bytes = new RowBytes(new ByteArrayInputStream(text.getBytes(UTF_8)));
        Cells cells = new Cells();
        while (bytes.next()) {
            cells.split(bytes.buffer(), bytes.start(), bytes.end());
            List<String> row = new ArrayList<>();
            for (int cell = 0; cell < cells.count(); cell++) {
                row.add(cells.text(cell).orElseThrow());
            }
            rows.add(row);
        }
        return rows;
    }
}
