package covewalk.app.forms;

import javafx.scene.control.TextFormatter;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;

/**
 * Scanners part the elements of a code by the character GS (ASCII 29), which the system's fields drop, so that what follows
 * would belong to the element before. Here it is shown by the sign for it, and kept.
 */
public final class GroupSeparator {

    private static final String GS = "\u001d";
    private static final String SIGN = "\u241d";

    private GroupSeparator() {
    }

    /** Keeps it in a field, whether it is typed or pasted. */
    public static void keepIn(TextInputControl field) {
        field.setTextFormatter(new TextFormatter<>(change -> {
            change.setText(change.getText().replace(GS, SIGN));
            return change;
        }));
        field.addEventFilter(KeyEvent.KEY_TYPED, event -> {
            if (GS.equals(event.getCharacter())) {
                field.replaceSelection(SIGN);
                event.consume();
            }
        });
    }
}
