package covewalk.colour;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/** A published table that ships beside this class: comma-separated, lines with {@code #} are its source, then a header. */
final class PrintedTable {

    private PrintedTable() {
    }

    /** Every row below the header, each turned into what it stands for. */
    static <T> List<T> rows(String name, Function<Row, T> meaning) {
        InputStream resource = PrintedTable.class.getResourceAsStream(name);
        if (resource == null) {
            throw new IllegalStateException("this copy is incomplete: " + name + " is missing from it");
        }
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(resource, StandardCharsets.UTF_8))) {
            return lines.lines().filter(line -> !line.startsWith("#")).skip(1)
                    .map(line -> meaning.apply(new Row(line.split(",", -1)))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    /** One row, its cells counted from 0. */
    static final class Row {

        private final String[] cells;

        private Row(String[] cells) {
            this.cells = cells;
        }

        String text(int column) {
            return cells[column];
        }

        double number(int column) {
            return Double.parseDouble(cells[column]);
        }
    }
}
