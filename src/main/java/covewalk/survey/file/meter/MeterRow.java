package covewalk.survey.file.meter;

import java.util.List;

/**
 * One row of a table, with what it was written as.
 *
 * @param line its first line in the file, from 1
 * @param raw the row as it stood, without its line end
 * @param cells its cells without quotes and surrounding blanks
 * @param fault what keeps its cells from being told apart, or empty: a key of a problem
 */
record MeterRow(int line, String raw, List<String> cells, String fault) {

    private static final int EXCERPT = 60;

    MeterRow {
        cells = List.copyOf(cells);
    }

    /** The cell in that column, empty where the row ends before. */
    String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }

    /** How many cells there are up to the last that is not empty. */
    int width() {
        int width = cells.size();
        while (width > 0 && cells.get(width - 1).isEmpty()) {
            width--;
        }
        return width;
    }

    /** The row, or as much of it as a sentence can carry. */
    String excerpt() {
        return excerpt(raw);
    }

    static String excerpt(String text) {
        String oneLine = text.replaceAll("\\p{Cntrl}", " ");
        return oneLine.length() <= EXCERPT ? oneLine : oneLine.substring(0, EXCERPT) + "...";
    }
}
