package covewalk.survey.file.log;

import covewalk.survey.file.disk.Cells;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads cells that repeat from row to row: coves, set-ups, positions and digits. Equal ones are read once and give the
 * same object, so a million readings fit in some 200 MB. The table forgets what another cell pushes out.
 */
final class SharedCells<T> {

    private static final int SLOTS = 1 << 16;

    private record Read<T>(byte[] bytes, Optional<T> value) {
        boolean isOf(Cells cells, int cell) {
            return Arrays.equals(bytes, 0, bytes.length, cells.bytes(), cells.from(cell), cells.to(cell));
        }
    }

    private final Read<T>[] slots;
    private final Function<String, Optional<T>> meaning;

    /** @param meaning what a text says; empty where it says nothing that is known */
    @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type can only be made so
    SharedCells(Function<String, Optional<T>> meaning) {
        this.slots = new Read[SLOTS];
        this.meaning = meaning;
    }

    /** What the cell says; empty too where its bytes are no UTF-8. */
    Optional<T> of(Cells cells, int cell) {
        int slot = slot(cells, cell);
        Read<T> known = slots[slot];
        if (known == null || !known.isOf(cells, cell)) {
            byte[] bytes = Arrays.copyOfRange(cells.bytes(), cells.from(cell), cells.to(cell));
            known = new Read<>(bytes, cells.text(cell).flatMap(meaning));
            slots[slot] = known;
        }
        return known.value;
    }

    private static int slot(Cells cells, int cell) {
        byte[] bytes = cells.bytes();
        int hash = 0;
        for (int at = cells.from(cell); at < cells.to(cell); at++) {
            hash = 31 * hash + bytes[at];
        }
        int mixed = hash * 0x9E3779B9;
        return (mixed ^ mixed >>> 15) & SLOTS - 1;
    }
}
