package covewalk.demo;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A table of the scenario: commas, a header, and lines for people that begin with #. No cell holds a comma. */
final class Table {

    private Table() {
    }

    /** The rows of a table beside this class, each made into something by {@code make}. */
    static <T> List<T> read(String name, Function<Row, T> make) {
        List<String> lines = text(name).lines().filter(line -> !line.startsWith("#")).toList();
        String[] header = lines.get(0).split(",");
        return lines.stream().skip(1).map(line -> make.apply(new Row(cells(header, line)))).toList();
    }

    private static Map<String, String> cells(String[] header, String line) {
        String[] cells = line.split(",", -1);
        if (cells.length != header.length) {
            throw new IllegalArgumentException("not " + header.length + " cells: " + line);
        }
        Map<String, String> row = new HashMap<>();
        for (int i = 0; i < header.length; i++) {
            row.put(header[i], cells[i]);
        }
        return row;
    }

    private static String text(String name) {
        try (InputStream in = Table.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** One row, by column names. */
    record Row(Map<String, String> cells) {

        String text(String column) {
            if (!cells.containsKey(column)) {
                throw new IllegalArgumentException("no column " + column + " in " + cells.keySet());
            }
            return cells.get(column);
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** What stands in the cell with spaces between. */
        List<String> words(String column) {
            return List.of(text(column).split(" "));
        }
    }
}
