package covewalk.app.walk;

import covewalk.app.parts.DigitField;
import covewalk.app.parts.DigitPattern;
import covewalk.app.parts.NumberPad;
import covewalk.app.text.Texts;
import covewalk.survey.Role;
import java.util.List;
import javafx.beans.property.StringProperty;
import javafx.event.ActionEvent;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The fields that a reading is typed into, and what the number pad does to them. */
final class EntryPane extends HBox implements NumberPad.Keys {

    private static final DigitPattern LUX = DigitPattern.whole(0);

    private final WalkModel model;
    private final DigitField first = new DigitField();
    private final DigitField second = new DigitField();
    private final DigitField lux = new DigitField();
    private final Bounce bounce = new Bounce(() -> System.nanoTime() / 1_000_000);
    private final Label firstName = new Label();
    private final Label secondName = new Label();

    EntryPane(WalkModel model, Texts texts) {
        this.model = model;
        getStyleClass().add("walk-fields");
        Label luxName = new Label(texts.get("field.lux"));
        getChildren().addAll(field(firstName, first, "walk-first"), field(secondName, second, "walk-second"),
                field(luxName, lux, "walk-lux"));
        lux.getParent().getStyleClass().add("walk-lux-field");
        model.entry().shows().addListener(observable -> show());
        show();
        bind(first, model.entry().first());
        bind(second, model.entry().second());
        bind(lux, model.entry().lux());
        first.setWhenFull(() -> focus(Entry.Field.SECOND));
        second.setWhenFull(this::secondIsFull);
        model.setOnFocus(this::focusNext);
        model.way().aimProperty().addListener(observable -> offer());
        offer();
    }

    /** Where a cove is read there is nothing to type, and what can be done next needs the room. */
    private void offer() {
        boolean aimed = model.way().aim() != null;
        setDisable(!aimed);
        setVisible(aimed);
        setManaged(aimed);
    }

    private VBox field(Label name, DigitField field, String id) {
        field.setId(id);
        name.setLabelFor(field);
        name.getStyleClass().add("field-name");
        field.setOnAction(event -> enterOnce());
        VBox both = new VBox(name, field);
        HBox.setHgrow(both, Priority.ALWAYS);
        return both;
    }

    private static void bind(DigitField field, StringProperty text) {
        field.textProperty().bindBidirectional(text);
    }

    private void show() {
        MeterShows meter = model.entry().meter();
        first.use(meter.first());
        second.use(meter.second());
        lux.use(LUX);
        firstName.setText(meter.pair().first());
        secondName.setText(meter.pair().second());
    }

    /** Lux follows where the meter shows it, and for a dark reading, which says nothing without. */
    private void secondIsFull() {
        boolean dark = model.way().aim() != null && model.way().aim().role() == Role.DARK;
        if (model.entry().meter().lux() || dark) {
            lux.requestFocus();
        }
    }

    /** What was handed over, or is shown to be corrected, goes with the first digit that is typed. */
    private void focusNext(Entry.Field field) {
        if (field == Entry.Field.FIRST) {
            boolean shown = model.entry().isHandedOver() || model.way().aim() != null && model.way().aim().corrects().isPresent();
            if (shown) {
                List.of(first, second, lux).forEach(DigitField::replaceWhenTyped);
            }
        }
        focus(field);
    }

    void focus(Entry.Field field) {
        of(field).requestFocus();
        of(field).end();
    }

    private DigitField of(Entry.Field field) {
        return switch (field) {
            case FIRST -> first;
            case SECOND -> second;
            case LUX -> lux;
        };
    }

    /** The field that has the focus, else the first. */
    private DigitField current() {
        return lux.isFocused() ? lux : second.isFocused() ? second : first;
    }

    @Override
    public void type(String text) {
        if (getScene() != null && getScene().getFocusOwner() instanceof TextInputControl other && !(other instanceof DigitField)) {
            other.insertText(other.getCaretPosition(), text);
            return;
        }
        DigitField field = current();
        field.requestFocus();
        field.type(text);
    }

    @Override
    public void turnSign() {
        second.requestFocus();
        second.turnSign();
    }

    @Override
    public void back() {
        if (getScene() != null && getScene().getFocusOwner() instanceof TextInputControl other && !(other instanceof DigitField)) {
            other.deletePreviousChar();
            return;
        }
        DigitField field = current();
        if (field == second && model.entry().meter().second().isBlank(second.getText())) {
            field = first;
        }
        field.requestFocus();
        field.back();
    }

    @Override
    public void next() {
        focus(current() == first ? Entry.Field.SECOND : current() == second ? Entry.Field.LUX : Entry.Field.FIRST);
    }

    @Override
    public void enter() {
        if (getScene() != null && getScene().getFocusOwner() instanceof TextField other && !(other instanceof DigitField)) {
            other.fireEvent(new ActionEvent());
        } else {
            enterOnce();
        }
    }

    private void enterOnce() {
        if (!bounce.again() || model.says().question().get() == null) {
            model.enter();
        }
    }
}
