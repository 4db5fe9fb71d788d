package covewalk.survey.file.log;

import covewalk.survey.Reading;
import covewalk.survey.Typed;
import covewalk.survey.TypedPair;
import covewalk.survey.file.disk.CsvText;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A reading as a row of the log, with the digits as typed. */
final class LogRow {

    private final Map<LogColumn, String> texts = new EnumMap<>(LogColumn.class);

    LogRow(Reading reading) {
        texts.put(LogColumn.READING, reading.id());
        texts.put(LogColumn.COVE, reading.cove());
        texts.put(LogColumn.POSITION_M, reading.positionM().text());
        texts.put(LogColumn.ROLE, reading.role().code());
        texts.put(LogColumn.SETUP, reading.setUp());
        texts.put(LogColumn.ROUND, Integer.toString(reading.round()));
        reading.colour().ifPresent(colour -> {
            put(colour.cctDuv(), LogColumn.CCT_K, LogColumn.DUV);
            put(colour.xy(), LogColumn.X, LogColumn.Y);
            put(colour.uvPrime(), LogColumn.U_PRIME, LogColumn.V_PRIME);
        });
        texts.put(LogColumn.LUX, reading.lux().map(Typed::text).orElse(""));
        texts.put(LogColumn.TAKEN_AT, reading.takenAt());
        texts.put(LogColumn.REPLACES, reading.replaces());
        texts.put(LogColumn.NOTE, reading.note());
    }

    private void put(Optional<TypedPair> pair, LogColumn first, LogColumn second) {
        texts.put(first, pair.map(both -> both.first().text()).orElse(""));
        texts.put(second, pair.map(both -> both.second().text()).orElse(""));
    }

    /** What this row says that the log has no column for; what a reader assumes anyway needs none. */
    Optional<LogColumn> missingIn(LogHeader header, String firstSetUp) {
        return texts.keySet().stream()
                .filter(column -> !header.has(column))
                .filter(column -> !texts.get(column).equals(assumed(column, firstSetUp)))
                .findFirst();
    }

    private static String assumed(LogColumn column, String firstSetUp) {
        return switch (column) {
            case ROLE -> "walk";
            case SETUP -> firstSetUp;
            case ROUND -> "1";
            default -> "";
        };
    }

    /** The row under this header; cells of unknown columns stay empty. */
    String under(LogHeader header) {
        List<String> row = new ArrayList<>();
        for (int cell = 0; cell < header.width(); cell++) {
            row.add(LogColumn.of(header.name(cell)).map(texts::get).orElse(""));
        }
        return CsvText.row(row);
    }
}
