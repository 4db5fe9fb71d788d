package covewalk.app.walk;

import covewalk.app.parts.DigitPattern;
import covewalk.survey.Reading;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedPair;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/**
 * What is typed for one reading. Once it was handed over to be kept its digits stay to be seen; they go when the reading
 * is on disk, or when the next one is begun.
 */
final class Entry {

    /** The fields in the order of typing. */
    enum Field { FIRST, SECOND, LUX }

    private final StringProperty first = new SimpleStringProperty("");
    private final StringProperty second = new SimpleStringProperty("");
    private final StringProperty lux = new SimpleStringProperty("");
    private final StringProperty note = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<MeterShows> shows = new ReadOnlyObjectWrapper<>();
    private String handedOver = "";
    private boolean clearing;

    Entry(MeterShows shows) {
        use(shows);
        first.addListener((property, before, now) -> changed(first));
        second.addListener((property, before, now) -> changed(second));
        lux.addListener((property, before, now) -> changed(lux));
    }

    StringProperty first() {
        return first;
    }

    StringProperty second() {
        return second;
    }

    StringProperty lux() {
        return lux;
    }

    /** A word that the next reading carries. */
    StringProperty note() {
        return note;
    }

    ReadOnlyObjectProperty<MeterShows> shows() {
        return shows.getReadOnlyProperty();
    }

    MeterShows meter() {
        return shows.get();
    }

    /** From now on the meter shows this; what was typed as something else goes. */
    void use(MeterShows other) {
        shows.set(other);
        clear();
    }

    void clear() {
        clearAllBut(null);
        handedOver = "";
    }

    private void clearAllBut(StringProperty kept) {
        clearing = true;
        set(first, kept, shows.get().first().before());
        set(second, kept, shows.get().second().before());
        set(lux, kept, "");
        clearing = false;
    }

    private static void set(StringProperty field, StringProperty kept, String text) {
        if (field != kept) {
            field.set(text);
        }
    }

    /** The next reading is begun: nothing of the last one may stay beside it. */
    private void changed(StringProperty field) {
        if (!clearing && !handedOver.isEmpty()) {
            handedOver = "";
            clearAllBut(field);
        }
    }

    boolean isHandedOver() {
        return !handedOver.isEmpty();
    }

    /** @param id of the reading that was made of it */
    void handOver(String id) {
        handedOver = id;
        note.set("");
    }

    /** That reading is on disk. */
    void kept(String id) {
        if (handedOver.equals(id)) {
            clear();
        }
    }

    /** Shows an earlier reading, to be corrected. */
    void show(Reading reading) {
        clear();
        TypedColour colour = reading.colour().orElseThrow();
        Optional<TypedPair> pair = meter().pair().of(colour);
        pair.ifPresent(both -> {
            first.set(both.first().text());
            second.set(both.second().text());
        });
        lux.set(reading.lux().map(Typed::text).orElse(""));
        note.set(reading.note());
    }

    boolean isBlank() {
        return isHandedOver() || meter().first().isBlank(first.get()) && meter().second().isBlank(second.get()) && lux.get().isEmpty();
    }

    /** Whether the sign of a number that has one was left out. */
    boolean lacksSign() {
        String text = second.get();
        return meter().second().signed() && !text.startsWith("+") && !text.startsWith("-");
    }

    /** The first field that is needed and empty. */
    Optional<Field> missing() {
        if (isHandedOver() || meter().first().typed(first.get()).isEmpty()) {
            return Optional.of(Field.FIRST);
        }
        return meter().second().typed(second.get()).isEmpty() ? Optional.of(Field.SECOND) : Optional.empty();
    }

    /** The field whose number has another count of digits than the meter shows. */
    Optional<Field> oddDigits() {
        if (!meter().first().isFull(first.get())) {
            return Optional.of(Field.FIRST);
        }
        return meter().second().isFull(second.get()) ? Optional.empty() : Optional.of(Field.SECOND);
    }

    /** Nothing but what is written in the file: a plus says nothing there. */
    Optional<TypedColour> colour() {
        Optional<Typed> one = Typed.of(first.get());
        Optional<Typed> other = Typed.of(second.get().replace("+", ""));
        return one.isPresent() && other.isPresent() ? Optional.of(meter().pair().colour(one.get(), other.get())) : Optional.empty();
    }

    Optional<Typed> luxTyped() {
        return Typed.of(lux.get());
    }

    /** All of it, to know whether it is still the same. */
    String asTyped() {
        return String.join("|", first.get(), second.get(), lux.get());
    }
}
