package covewalk.app.forms;

import javafx.scene.control.TextField;

/** A text field into which a scanner may type. */
public final class ScanField extends TextField {

    public ScanField() {
        GroupSeparator.keepIn(this);
    }
}
