package covewalk.app.parts;

import javafx.application.Platform;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.control.TextFormatter.Change;

/**
 * A field for a number that is typed by its digits. When the last one is there the field says so, and who laid it out moves
 * on to the next. A number pad types into it just as a keyboard does.
 */
public final class DigitField extends TextField {

    private DigitPattern pattern = DigitPattern.whole(0);
    private boolean fresh;
    private Runnable whenFull = () -> { };

    public DigitField() {
        getStyleClass().add("digits");
        setTextFormatter(new TextFormatter<>(this::filtered));
        focusedProperty().addListener((property, before, now) -> {
            if (now) {
                end();
            }
        });
    }

    /** How its number is typed from now on; what was typed before goes. */
    public void use(DigitPattern other) {
        pattern = other;
        fresh = false;
        setText(other.before());
        end();
    }

    /** Keeps what it shows until the next digit is typed, which begins anew. */
    public void replaceWhenTyped() {
        fresh = true;
    }

    /** @param next what to do once the last digit was typed */
    public void setWhenFull(Runnable next) {
        whenFull = next;
    }

    /** Types a digit, a mark or a sign at the end, whatever is selected. */
    public void type(String key) {
        appendText(key);
        end();
    }

    public void turnSign() {
        setText(pattern.turned(getText()));
        end();
    }

    public void back() {
        end();
        deletePreviousChar();
    }

    @Override
    public void end() {
        selectRange(getLength(), getLength());
    }

    private Change filtered(Change change) {
        if (!change.isContentChange()) {
            return change;
        }
        String was = change.getControlText();
        boolean typing = change.isAdded() && change.getText().length() == 1;
        String now = pattern.accept(fresh ? "" : was, proposed(change, typing)).orElse(null);
        if (now == null) {
            return null;
        }
        fresh &= !typing && !now.equals(pattern.before());
        if (typing && !pattern.isFull(was) && pattern.isFull(now)) {
            Platform.runLater(whenFull); // once this change is made
        }
        change.setRange(0, was.length());
        change.setText(now);
        change.selectRange(now.length(), now.length());
        return change;
    }

    /** A digit typed ahead of what is there already belongs behind it. */
    private String proposed(Change change, boolean typing) {
        if (typing && fresh) {
            return pattern.before() + change.getText();
        }
        boolean ahead = typing && change.getRangeEnd() < pattern.before().length();
        return ahead ? change.getControlText() + change.getText() : change.getControlNewText();
    }
}
