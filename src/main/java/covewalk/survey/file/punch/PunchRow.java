package covewalk.survey.file.punch;

import covewalk.survey.file.disk.CsvText;
import covewalk.survey.file.disk.SpreadsheetCell;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A change as a row of {@code punch.csv}; a text that a spreadsheet would run has an apostrophe in front. */
final class PunchRow {

    private final Map<PunchColumn, String> texts = new EnumMap<>(PunchColumn.class);

    PunchRow(PunchChange change) {
        texts.put(PunchColumn.ITEM, Integer.toString(change.item()));
        change.cells().forEach((column, text) -> texts.put(column, guarded(text)));
        change.place().ifPresent(place -> {
            texts.put(PunchColumn.COVE, guarded(place.cove()));
            texts.put(PunchColumn.KIND, guarded(place.kind()));
            texts.put(PunchColumn.POSITION_M, BigDecimal.valueOf(place.positionM()).setScale(3).toPlainString());
            texts.put(PunchColumn.REELS, guarded(place.reels()));
        });
    }

    /** A single hyphen is the mark for clearing, and no formula. */
    private static String guarded(String text) {
        return text.equals(PunchColumn.CLEARED) ? text : SpreadsheetCell.harmless(text);
    }

    /** What this row says that the log has no column for. */
    Optional<PunchColumn> missingIn(PunchHeader header) {
        return texts.keySet().stream().filter(column -> !header.has(column)).findFirst();
    }

    /** The row under this header; cells of unknown columns stay empty. */
    String under(PunchHeader header) {
        List<String> row = new ArrayList<>();
        for (int cell = 0; cell < header.width(); cell++) {
            row.add(PunchColumn.of(header.name(cell)).map(texts::get).orElse(""));
        }
        return CsvText.row(row);
    }
}
