package covewalk.survey.file.meter;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The rows of earlier imports that are in the log. A meter's memory exported again, or a file exported before and
 * corrected since, brings them once more; they are known by standing there letter for letter.
 */
final class EarlierRows {

    private final Set<String> named = new HashSet<>();
    private final Set<String> placed = new HashSet<>();

    /**
     * @param originals the folder of imported files, which need not be there
     * @param except the name of the file that is being imported
     * @param tags the source tags in the log
     */
    static EarlierRows in(Path originals, String except, Set<String> tags, HeaderTable names) throws IOException {
        EarlierRows earlier = new EarlierRows();
        if (!tags.isEmpty() && Files.isDirectory(originals)) {
            for (Path file : files(originals)) {
                String name = file.getFileName().toString();
                if (!name.equals(except)) {
                    MeterTable.in(FileText.readingsOf(Files.readAllBytes(file)), names, Map.of())
                            .ifPresent(table -> earlier.take(table, name, tags));
                }
            }
        }
        return earlier;
    }

    private static List<Path> files(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, Files::isRegularFile)) {
            entries.forEach(files::add);
        }
        return files;
    }

    private void take(MeterTable table, String name, Set<String> tags) {
        for (MeterRow row : table.rows()) {
            if (tags.contains(SourceTag.of(name, row.line()))) {
                (isNamed(table, row) ? named : placed).add(isNamed(table, row) ? row.raw() : atPlace(row));
            }
        }
    }

    /**
     * Whether the row was imported before: one that carries a time or a name is known wherever it stands, one of mere
     * numbers only on the same line, since two readings may well come out alike.
     */
    boolean hold(MeterTable table, MeterRow row) {
        return isNamed(table, row) ? named.contains(row.raw()) : placed.contains(atPlace(row));
    }

    private static boolean isNamed(MeterTable table, MeterRow row) {
        boolean timed = RowTimes.written(table.columns(), row).isPresent();
        return timed || table.columns().all(MeterField.NAME).stream().anyMatch(column -> !row.cell(column.index()).isEmpty());
    }

    private static String atPlace(MeterRow row) {
        return row.line() + ":" + row.raw();
    }
}
