package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The trade's names for the columns of a table of readings, in several languages, from {@code meter-headers.csv};
 * header {@code field,name,unit,source}. A survey's folder may hold a file of that name with further rows.
 */
public final class HeaderTable {

    /** The file's name, here and in a survey's folder. */
    public static final String FILE = "meter-headers.csv";

    private final Map<String, HeaderMeaning> meanings = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private HeaderTable() {
    }

    /** The names that come with the program. */
    public static HeaderTable ofTheTrade() {
        HeaderTable table = new HeaderTable();
        try (InputStream in = HeaderTable.class.getResourceAsStream(FILE)) {
            table.add(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return table;
    }

    /** The same, and the names in the folder's own file where there is one; its names win. */
    public static HeaderTable ofTheTradeAnd(Path folder) throws IOException {
        HeaderTable table = ofTheTrade();
        Path own = folder.resolve(FILE);
        if (Files.isRegularFile(own)) {
            table.add(FileText.readingsOf(Files.readAllBytes(own)).get(0).text());
        }
        return table;
    }

    /** What the column of this title holds, or empty where the table does not know. */
    public Optional<MeterField> field(String title) {
        return meaning(title).map(HeaderMeaning::field);
    }

    /** What is wrong with the rows of the folder's own file; those rows do not count. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    Optional<HeaderMeaning> meaning(String title) {
        HeaderName name = HeaderName.of(title);
        return Optional.ofNullable(meanings.get(name.name()))
                .map(found -> new HeaderMeaning(found.field(), name.unit().orElse(found.unit())));
    }

    private void add(String text) {
        List<MeterRow> rows = new RowSplitter(text, ',').all();
        for (MeterRow row : rows) {
            boolean heading = row.cell(0).equals("field");
            if (!heading && !row.raw().startsWith("#")) {
                add(row);
            }
        }
    }

    private void add(MeterRow row) {
        Optional<MeterField> field = MeterField.of(row.cell(0));
        Optional<MeterUnit> unit = MeterUnit.of(row.cell(2));
        if (field.isEmpty() || unit.isEmpty() || row.cell(1).isEmpty()) {
            problems.add(Problem.warning("import.header-table", row.excerpt()).at(FILE, row.line(), ""));
            return;
        }
        meanings.put(HeaderName.of(row.cell(1)).name(), new HeaderMeaning(field.get(), unit.get()));
    }
}
