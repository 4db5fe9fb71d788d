package covewalk.survey.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.exceptions.CsvValidationException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Our rows and cells against those of OpenCSV 5.12.0, RFC 4180 parser, on a thousand random tables. */
class RowsAgainstLibraryTest {

    private static final String LETTERS = "ab0.,\"\n é€";

    @Test
    void splitsTablesAsTheLibraryDoes() throws IOException, CsvValidationException {
        Random random = new Random(4180);
        for (int table = 0; table < 1000; table++) {
            String text = table(random);
            assertEquals(library(text), ours(text), text);
        }
    }

    private static String table(Random random) {
        StringBuilder text = new StringBuilder();
        for (int row = 0; row < 4; row++) {
            List<String> cells = new ArrayList<>();
            for (int cell = 0; cell < 1 + random.nextInt(4); cell++) {
                cells.add(cell(random));
            }
            text.append(String.join(",", cells)).append(random.nextBoolean() ? "\n" : "\r\n");
        }
        return text.toString();
    }

    private static String cell(Random random) {
        StringBuilder cell = new StringBuilder();
        for (int i = 0; i < random.nextInt(6); i++) {
            cell.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        boolean needsQuotes = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n');
        return needsQuotes || random.nextInt(5) == 0 ? '"' + cell.toString().replace("\"", "\"\"") + '"' : cell.toString();
    }

    private static List<List<String>> library(String text) throws IOException, CsvValidationException {
        List<List<String>> rows = new ArrayList<>();
        try (CSVReader reader = new CSVReaderBuilder(new StringReader(text))
                .withCSVParser(new RFC4180ParserBuilder().build()).build()) {
            for (String[] row = reader.readNext(); row != null; row = reader.readNext()) {
                rows.add(List.of(row));
            }
        }
        return rows;
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
