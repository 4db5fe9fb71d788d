package covewalk.survey.file.log;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180ParserBuilder;
import com.opencsv.exceptions.CsvValidationException;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** A thousand random tables, and their cells as OpenCSV 5.12.0 splits them with its parser for RFC 4180. */
public final class LibraryTables {

    private static final String LETTERS = "ab0.,\"\n é€";

    private LibraryTables() {
    }

    public static Stream<String> all() {
        Random random = new Random(4180);
        return Stream.generate(() -> table(random)).limit(1000);
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

    /** The cells of each row, without quotation marks. */
    public static List<List<String>> split(String table) {
        List<List<String>> rows = new ArrayList<>();
        try (CSVReader reader = new CSVReaderBuilder(new StringReader(table)).withCSVParser(new RFC4180ParserBuilder().build()).build()) {
            for (String[] row = reader.readNext(); row != null; row = reader.readNext()) {
                rows.add(List.of(row));
            }
        } catch (IOException | CsvValidationException refused) {
            throw new AssertionError(table, refused);
        }
        return rows;
    }
}
