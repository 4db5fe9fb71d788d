package covewalk.survey.file.punch;

import covewalk.survey.Problem;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What one row of {@code punch.csv} says of an item: only what changes.
 *
 * @param item its number, from 1
 * @param place which fault the number stands for; in the first row of an item, and empty in later ones
 * @param cells what is new; {@link PunchColumn#CLEARED} empties what stood there before
 */
public record PunchChange(int item, Optional<PunchPlace> place, Map<PunchColumn, String> cells) {

    /** The largest number an item can have. */
    public static final int MOST = 999_999;

    public PunchChange {
        if (item < 1 || item > MOST) {
            throw new IllegalArgumentException("item " + item + ": numbers go from 1 to " + MOST);
        }
        Map<PunchColumn, String> kept = new EnumMap<>(PunchColumn.class);
        cells.forEach((column, text) -> keep(column, text, kept));
        cells = Collections.unmodifiableMap(kept);
    }

    /** A row that says nothing of the item yet. */
    public static PunchChange of(int item) {
        return new PunchChange(item, Optional.empty(), Map.of());
    }

    /**
     * The same row with one cell more.
     *
     * @param text as {@link PunchColumn#check} finds nothing wrong with it
     */
    public PunchChange with(PunchColumn column, String text) {
        Map<PunchColumn, String> more = new EnumMap<>(PunchColumn.class);
        more.putAll(cells);
        more.put(column, text);
        return new PunchChange(item, place, more);
    }

    /** The same row, saying which fault the number stands for. */
    public PunchChange at(PunchPlace fault) {
        return new PunchChange(item, Optional.of(fault), cells);
    }

    private static void keep(PunchColumn column, String text, Map<PunchColumn, String> kept) {
        if (!PunchColumn.STATE.contains(column)) {
            throw new IllegalArgumentException(column + " is not a thing to be recorded of an item");
        }
        Optional<Problem> wrong = column.check(text);
        if (wrong.isPresent()) {
            throw new IllegalArgumentException(wrong.get().inFull(Locale.ROOT));
        }
        if (!text.isEmpty()) {
            kept.put(column, text);
        }
    }
}
