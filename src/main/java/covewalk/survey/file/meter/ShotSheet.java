package covewalk.survey.file.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A file that holds one reading, a name and its value on each line. */
final class ShotSheet {

    private static final int LONGEST = 500;
    private static final List<Character> SEPARATORS = List.of('\t', ';', ',', ':', '=');

    private ShotSheet() {
    }

    /** The sheet turned on its side: a table of one row; empty where it gives no colour. */
    static Optional<MeterTable> in(FileText text, HeaderTable names, Map<String, HeaderMeaning> named) {
        for (char separator : SEPARATORS) {
            List<MeterRow> lines = new RowSplitter(text.text(), separator).first(LONGEST).stream()
                    .map(line -> new MeterRow(line.line(), line.raw(), Columns.mended(line.cells()), line.fault())).toList();
            Optional<MeterTable> sheet = sheet(text, separator, lines, names, named);
            if (sheet.isPresent()) {
                return sheet;
            }
        }
        return Optional.empty();
    }

    private static Optional<MeterTable> sheet(FileText text, char separator, List<MeterRow> lines, HeaderTable names,
                                              Map<String, HeaderMeaning> named) {
        List<String> titles = lines.stream().map(line -> line.cell(0)).toList();
        Columns columns = Columns.of(titles, names, named);
        boolean valued = columns.known().stream().filter(column -> Columns.COLOUR_FIELDS.contains(column.field()))
                .noneMatch(column -> lines.get(column.index()).cell(1).isEmpty());
        if (lines.size() == LONGEST || !columns.haveColour() || !valued) {
            return Optional.empty();
        }
        List<String> values = lines.stream().map(line -> rest(line, separator)).toList();
        MeterRow units = new MeterRow(1, "", lines.stream().map(line -> line.cell(2)).toList(), "");
        MeterRow shot = new MeterRow(1, rawOf(lines), values, "");
        return Optional.of(new MeterTable(text, separator, titles, columns.with(units), lines.size() - 1, List.of(shot)));
    }

    /** The value; behind a colon or an equals sign everything is, as in a time of day. */
    private static String rest(MeterRow line, char separator) {
        boolean label = separator == ':' || separator == '=';
        return label && line.cells().size() > 2 ? line.raw().substring(line.raw().indexOf(separator) + 1).strip() : line.cell(1);
    }

    private static String rawOf(List<MeterRow> lines) {
        List<String> raw = new ArrayList<>();
        lines.forEach(line -> raw.add(line.raw()));
        return String.join("\n", raw);
    }
}
