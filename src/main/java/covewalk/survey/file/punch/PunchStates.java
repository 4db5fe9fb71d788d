package covewalk.survey.file.punch;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How all items stand to which a number was ever given.
 *
 * @param byItem by number
 */
public record PunchStates(SortedMap<Integer, PunchState> byItem) {

    /** No number was given yet. */
    public static final PunchStates NONE = new PunchStates(new TreeMap<>());

    public PunchStates {
        byItem = Collections.unmodifiableSortedMap(new TreeMap<>(byItem));
    }

    /** How an item stands; empty where the number was never given. */
    public Optional<PunchState> item(int number) {
        return Optional.ofNullable(byItem.get(number));
    }

    /** By number. */
    public List<PunchState> all() {
        return List.copyOf(byItem.values());
    }

    /** The lowest number above all that were ever given. */
    public int next() {
        return byItem.isEmpty() ? 1 : byItem.lastKey() + 1;
    }

    /** These, and of {@code others} those whose number was not given here. */
    public PunchStates over(PunchStates others) {
        SortedMap<Integer, PunchState> all = new TreeMap<>(others.byItem);
        all.putAll(byItem);
        return new PunchStates(all);
    }

    /** How they stand after further rows. */
    public PunchStates after(List<PunchChange> changes) {
        SortedMap<Integer, PunchState> now = new TreeMap<>(byItem);
        changes.forEach(change -> now.merge(change.item(), PunchState.open(change.item()).after(change),
                (before, alone) -> before.after(change)));
        return new PunchStates(now);
    }
}
