package covewalk.survey.file.convert;

import covewalk.survey.file.meter.FileText;
import covewalk.survey.file.meter.HeaderTable;
import covewalk.survey.file.meter.MeterField;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The header of a table of colours.
 *
 * @param charset what the titles were read as
 * @param separator what stands between cells
 * @param start where the header's row begins, in bytes
 * @param end where its line end is
 * @param width how many columns it has
 * @param places the column of each quantity that has one, from 0
 * @param twice the first quantity that several columns claim to be
 * @param problemColumn the column called {@code problem}, or -1
 */
record TableHead(Charset charset, char separator, int start, int end, int width, Map<Quantity, Integer> places, Optional<Quantity> twice,
                 int problemColumn) {

    private static final char[] SEPARATORS = {'\t', ';', ','};
    private static final int DEEPEST = 200;

    /** Finds the header in the first bytes of a table: the first row with most known columns that give a colour. */
    static Optional<TableHead> in(byte[] bytes, int filled, boolean last, HeaderTable names) {
        TableHead best = null;
        for (char separator : SEPARATORS) {
            RowCells cells = new RowCells(separator);
            int at = 0;
            for (int row = 0; row < DEEPEST && at < filled; row++) {
                int end = cells.split(bytes, at, filled, last);
                if (end == RowCells.MORE) {
                    break;
                }
                Optional<TableHead> head = of(cells, at, end, separator, names);
                best = head.isPresent() && (best == null || head.get().places.size() > best.places.size()) ? head.get() : best;
                at = end + lineEndLength(bytes, end, filled);
            }
        }
        return Optional.ofNullable(best);
    }

    /** How long the line end there is: 0 at the end of the bytes. */
    static int lineEndLength(byte[] bytes, int at, int filled) {
        boolean both = at + 1 < filled && bytes[at] == '\r' && bytes[at + 1] == '\n';
        return both ? 2 : at < filled ? 1 : 0;
    }

    private static Optional<TableHead> of(RowCells cells, int start, int end, char separator, HeaderTable names) {
        TableHead best = null;
        for (FileText text : FileText.readingsOf(Arrays.copyOfRange(cells.bytes(), start, end))) {
            List<String> titles = titles(cells, text.charset());
            Map<Quantity, Integer> places = places(titles, names);
            boolean better = givesColour(places) && (best == null || places.size() > best.places.size());
            best = better ? new TableHead(text.charset(), separator, start, end, titles.size(), places, twice(titles, names),
                    titles.indexOf("problem")) : best;
        }
        return Optional.ofNullable(best);
    }

    private static List<String> titles(RowCells cells, Charset charset) {
        List<String> titles = new ArrayList<>();
        for (int cell = 0; cell < cells.count(); cell++) {
            int start = cells.innerStart(cell);
            titles.add(new String(cells.bytes(), start, Math.max(0, cells.innerEnd(cell) - start), charset).replace("\uFEFF", ""));
        }
        return titles;
    }

    private static Map<Quantity, Integer> places(List<String> titles, HeaderTable names) {
        Map<Quantity, Integer> places = new EnumMap<>(Quantity.class);
        for (int i = 0; i < titles.size(); i++) {
            Optional<MeterField> field = names.field(titles.get(i));
            for (Quantity quantity : Quantity.values()) {
                if (field.filter(quantity.field()::equals).isPresent()) {
                    places.putIfAbsent(quantity, i);
                }
            }
        }
        return places;
    }

    private static Optional<Quantity> twice(List<String> titles, HeaderTable names) {
        return Arrays.stream(Quantity.values()).filter(quantity -> titles.stream()
                .filter(title -> names.field(title).filter(quantity.field()::equals).isPresent()).count() > 1).findFirst();
    }

    private static boolean givesColour(Map<Quantity, Integer> places) {
        return places.keySet().containsAll(List.of(Quantity.X, Quantity.Y))
                || places.keySet().containsAll(List.of(Quantity.U_PRIME, Quantity.V_PRIME))
                || places.keySet().containsAll(List.of(Quantity.CCT_K, Quantity.DUV));
    }

    int place(Quantity quantity) {
        return places.getOrDefault(quantity, -1);
    }

    /** The quantities that have no column, in order. */
    List<Quantity> appended() {
        return Arrays.stream(Quantity.values()).filter(quantity -> !places.containsKey(quantity)).toList();
    }
}
