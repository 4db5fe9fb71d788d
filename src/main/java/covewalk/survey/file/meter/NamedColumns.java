package covewalk.survey.file.meter;

import covewalk.survey.Problem;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a user said that columns hold, looked up: the code of a field, or a name with a unit such as position_mm or fc. */
final class NamedColumns {

    private NamedColumns() {
    }

    static Map<String, HeaderMeaning> of(Map<String, String> named, HeaderTable table) {
        Map<String, HeaderMeaning> meanings = new HashMap<>();
        named.forEach((column, field) -> meaning(field, table).ifPresent(found -> meanings.put(column.strip(), found)));
        return meanings;
    }

    private static Optional<HeaderMeaning> meaning(String field, HeaderTable table) {
        return table.meaning(field)
                .or(() -> MeterField.of(field).map(found -> new HeaderMeaning(found, MeterUnit.NONE)));
    }

    /** Fields that do not exist. */
    static List<Problem> unknownFields(Map<String, String> named, HeaderTable table) {
        String fields = Arrays.stream(MeterField.values()).map(MeterField::code).collect(Collectors.joining(", "));
        return named.entrySet().stream().filter(entry -> meaning(entry.getValue(), table).isEmpty())
                .map(entry -> Problem.refusal("import.no-such-field", entry.getKey(), entry.getValue(), fields)).toList();
    }

    /** Columns that the file has not got. */
    static List<Problem> missing(Map<String, String> named, MeterTable table) {
        List<String> titles = Columns.mended(table.header());
        return named.keySet().stream().map(String::strip).filter(column -> !titles.contains(column) && !isNumber(column, titles.size()))
                .map(column -> Problem.refusal("import.no-such-column", column, String.join(", ", titles))).toList();
    }

    private static boolean isNumber(String column, int columns) {
        return column.matches("\\d{1,4}") && Integer.parseInt(column) >= 1 && Integer.parseInt(column) <= columns;
    }
}
