package covewalk.report.page;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.Function;

/** A list whose elements are made each time they are asked for, so that a long report is never in memory as a whole. */
final class LazyList<F, T> extends AbstractList<T> implements RandomAccess {

    private final List<F> from;
    private final Function<F, T> made;

    LazyList(List<F> from, Function<F, T> made) {
        this.from = from;
        this.made = made;
    }

    @Override
    public T get(int index) {
        return made.apply(from.get(index));
    }

    @Override
    public int size() {
        return from.size();
    }
}
