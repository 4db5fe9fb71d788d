package covewalk.survey.file.punch;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * How an item of the punch list stands, by all rows of {@code punch.csv} together.
 *
 * @param item its number, from 1
 * @param place which fault it stands for; empty where nobody noted it
 * @param cells what is filled in, none of it empty
 */
public record PunchState(int item, Optional<PunchPlace> place, Map<PunchColumn, String> cells) {

    public PunchState {
        Map<PunchColumn, String> kept = new EnumMap<>(PunchColumn.class);
        kept.putAll(cells);
        cells = Collections.unmodifiableMap(kept);
    }

    /** An item of which nothing is recorded. */
    public static PunchState open(int item) {
        return new PunchState(item, Optional.empty(), Map.of());
    }

    /** What is filled in there; empty where nothing is. */
    public String text(PunchColumn column) {
        return cells.getOrDefault(column, "");
    }

    public PunchStage stage() {
        if (cells.containsKey(PunchColumn.ACCEPTED)) {
            return PunchStage.ACCEPTED;
        }
        if (cells.containsKey(PunchColumn.REINSPECTED)) {
            return PunchStage.REINSPECTED;
        }
        return cells.containsKey(PunchColumn.DONE) ? PunchStage.DONE : PunchStage.OPEN;
    }

    /** All of it as one row, for the log of a survey that carries it on. */
    public PunchChange asChange() {
        return new PunchChange(item, place, cells);
    }

    PunchState after(PunchChange change) {
        Map<PunchColumn, String> now = new EnumMap<>(PunchColumn.class);
        now.putAll(cells);
        change.cells().forEach((column, text) -> {
            if (text.equals(PunchColumn.CLEARED)) {
                now.remove(column);
            } else {
                now.put(column, text);
            }
        });
        return new PunchState(item, place.isPresent() ? place : change.place(), now);
    }
}
