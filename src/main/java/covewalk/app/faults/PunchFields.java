package covewalk.app.faults;

import covewalk.survey.Problem;
import covewalk.survey.file.punch.PunchColumn;
import covewalk.survey.file.punch.PunchState;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What is typed about an item. It stays until it is on disk, also while somebody looks at another item. */
final class PunchFields {

    private final Map<PunchColumn, StringProperty> typed = new EnumMap<>(PunchColumn.class);
    private final Map<Integer, Map<PunchColumn, String>> drafts = new HashMap<>();
    private PunchState onDisk;

    PunchFields() {
        PunchColumn.STATE.forEach(column -> typed.put(column, new SimpleStringProperty("")));
    }

    StringProperty typed(PunchColumn column) {
        return typed.get(column);
    }

    /** As it is on disk; what was typed over it and is not recorded stays. */
    void show(PunchState state) {
        boolean same = onDisk != null && onDisk.item() == state.item();
        Map<PunchColumn, String> draft = same ? changed() : drafts.getOrDefault(state.item(), Map.of());
        onDisk = state;
        typed.forEach((column, text) -> text.set(draft.containsKey(column) ? cleared(draft.get(column)) : state.text(column)));
    }

    private static String cleared(String cell) {
        return cell.equals(PunchColumn.CLEARED) ? "" : cell;
    }

    /** Somebody looks at something else. */
    void leave() {
        if (onDisk != null) {
            drafts.put(onDisk.item(), changed());
            onDisk = null;
        }
    }

    /** What was typed is on disk now. */
    void recorded(Map<PunchColumn, String> cells) {
        if (onDisk != null) {
            drafts.remove(onDisk.item());
            Map<PunchColumn, String> now = new EnumMap<>(PunchColumn.class);
            now.putAll(onDisk.cells());
            cells.forEach((column, text) -> now.put(column, cleared(text)));
            now.values().removeIf(String::isEmpty);
            onDisk = new PunchState(onDisk.item(), onDisk.place(), now);
        }
    }

    /** What differs from the disk; a hyphen where something was cleared. */
    Map<PunchColumn, String> changed() {
        Map<PunchColumn, String> cells = new EnumMap<>(PunchColumn.class);
        typed.forEach((column, text) -> {
            String now = text.get().strip();
            if (onDisk != null && !now.equals(onDisk.text(column))) {
                cells.put(column, now.isEmpty() ? PunchColumn.CLEARED : now);
            }
        });
        return cells;
    }

    /** What of it cannot stand there. */
    List<Problem> wrong() {
        return changed().entrySet().stream().flatMap(cell -> cell.getKey().check(cell.getValue()).stream()).collect(Collectors.toList());
    }
}
