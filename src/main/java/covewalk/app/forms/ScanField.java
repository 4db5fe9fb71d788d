package covewalk.app.forms;

import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.input.KeyEvent;

/**
 * A text field into which a scanner may type. Scanners part the elements of a code by the character GS, which a text field
 * drops; here it is shown by the sign for it, and kept.
 */
public final class ScanField extends TextField {

    private static final String GS = "\u001d";
    private static final String SIGN = "\u241d";

    public ScanField() {
        setTextFormatter(new TextFormatter<>(change -> {
            change.setText(change.getText().replace(GS, SIGN));
            return change;
        }));
        addEventFilter(KeyEvent.KEY_TYPED, event -> {
            if (GS.equals(event.getCharacter())) {
                replaceSelection(SIGN);
                event.consume();
            }
        });
    }
}
