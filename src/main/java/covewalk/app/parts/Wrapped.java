package covewalk.app.parts;

import javafx.scene.control.Label;

/** A text of as many lines as it takes: none is cut off where the room is narrow. */
public final class Wrapped extends Label {

    /** @param styles classes of the style sheet */
    public Wrapped(String text, String... styles) {
        super(text);
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
        getStyleClass().addAll(styles);
    }
}
