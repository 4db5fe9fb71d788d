package covewalk.survey.file.meter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A meter's file as a table.
 *
 * @param text what its bytes say
 * @param separator what stands between cells
 * @param header the header's cells as written, for rows that repeat it
 * @param columns what the columns mean
 * @param otherRows how many rows are no readings: lines before the header, the header, a row of units
 * @param rows the readings' rows
 */
record MeterTable(FileText text, char separator, List<String> header, Columns columns, int otherRows, List<MeterRow> rows) {

    private static final List<Character> SEPARATORS = List.of('\t', ';', ',');
    /** A header comes within so many rows or not at all. */
    private static final int DEEPEST = 200;
    private static final int LEAST_SCORE = 2;

    /** Finds the table in the text that makes most of it, or nothing where no row looks like a header. */
    static Optional<MeterTable> in(List<FileText> texts, HeaderTable names, Map<String, HeaderMeaning> named) {
        List<MeterTable> found = new ArrayList<>();
        for (FileText text : texts) {
            for (char separator : SEPARATORS) {
                in(text, separator, names, named).ifPresent(found::add);
            }
        }
        for (FileText text : texts) {
            ShotSheet.in(text, names, named).ifPresent(found::add);
        }
        return found.stream().max(Comparator.comparingInt(MeterTable::score)); // of equals the first
    }

    private static Optional<MeterTable> in(FileText text, char separator, HeaderTable names, Map<String, HeaderMeaning> named) {
        List<MeterRow> top = new RowSplitter(text.text(), separator).first(DEEPEST);
        int best = -1;
        int bestScore = LEAST_SCORE - 1;
        for (int i = 0; i < top.size(); i++) {
            int score = columns(top.get(i), names, named).score();
            if (score > bestScore) {
                best = i;
                bestScore = score;
            }
        }
        if (best < 0) {
            return Optional.empty();
        }
        List<MeterRow> all = new RowSplitter(text.text(), separator).all();
        return Optional.of(under(all, best, columns(all.get(best), names, named), text, separator));
    }

    private static Columns columns(MeterRow row, HeaderTable names, Map<String, HeaderMeaning> named) {
        return Columns.of(Columns.mended(row.cells()), names, named);
    }

    private static MeterTable under(List<MeterRow> all, int header, Columns columns, FileText text, char separator) {
        boolean units = header + 1 < all.size() && Columns.areUnits(all.get(header + 1));
        int first = header + (units ? 2 : 1);
        return new MeterTable(text, separator, all.get(header).cells(), units ? columns.with(all.get(header + 1)) : columns,
                first, List.copyOf(all.subList(first, all.size())));
    }

    int score() {
        return columns.score();
    }
}
