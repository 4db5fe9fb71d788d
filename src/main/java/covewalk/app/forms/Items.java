package covewalk.app.forms;

import covewalk.survey.Problem;
import covewalk.survey.Survey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** A list in the survey, such as its reels, of which one is looked at. */
public final class Items<T> {

    private final Description description;
    private final Supplier<String> path;
    private final Function<Survey, List<T>> in;
    private final BiFunction<Survey, List<T>, Survey> put;
    private final ObservableList<T> items = FXCollections.observableArrayList();
    /** Held here: whoever listens to it would be forgotten with it. */
    private final ObservableList<T> seen = FXCollections.unmodifiableObservableList(items);
    private final ReadOnlyIntegerWrapper chosen = new ReadOnlyIntegerWrapper(-1);

    /** @param path as the problems of a description name the list, such as {@code reels} */
    public Items(Description description, Supplier<String> path, Function<Survey, List<T>> in,
                 BiFunction<Survey, List<T>, Survey> put) {
        this.description = description;
        this.path = path;
        this.in = in;
        this.put = put;
        description.surveyProperty().addListener((property, before, now) -> follow());
        follow();
    }

    /** Shows the list as it is now. */
    public void follow() {
        List<T> now = description.survey() == null ? List.of() : in.apply(description.survey());
        if (!items.equals(now)) {
            items.setAll(now);
        }
        choose(Math.min(chosen.get(), now.size() - 1));
    }

    public ObservableList<T> items() {
        return seen;
    }

    /** Which one is looked at, from 0; -1 where none is. */
    public ReadOnlyIntegerProperty chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    public void choose(int index) {
        chosen.set(index < items.size() ? Math.max(-1, index) : -1);
    }

    public Optional<T> chosen() {
        return chosen.get() < 0 ? Optional.empty() : Optional.of(items.get(chosen.get()));
    }

    /** The part of the survey that the one at {@code index} is. */
    public Part<T> part(int index) {
        return new Part<>(path.get() + "[" + index + "]", survey -> at(survey, index), (survey, item) -> {
            List<T> changed = new ArrayList<>(in.apply(survey));
            changed.set(index, item);
            return put.apply(survey, changed);
        });
    }

    private Optional<T> at(Survey survey, int index) {
        List<T> all = in.apply(survey);
        return index >= 0 && index < all.size() ? Optional.of(all.get(index)) : Optional.empty();
    }

    /** Puts one more at the end, and looks at it. */
    public List<Problem> add(T item) {
        List<Problem> problems = description.change(survey -> {
            List<T> more = new ArrayList<>(in.apply(survey));
            more.add(item);
            return put.apply(survey, more);
        });
        if (problems.isEmpty()) {
            choose(items.indexOf(item));
        }
        return problems;
    }

    /** Takes out the one that is looked at. */
    public List<Problem> removeChosen() {
        int index = chosen.get();
        return index < 0 ? List.of() : description.change(survey -> {
            List<T> fewer = new ArrayList<>(in.apply(survey));
            fewer.remove(index);
            return put.apply(survey, fewer);
        });
    }
}
