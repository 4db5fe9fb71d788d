package covewalk.app.forms;

import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.control.Label;

/** A sentence that takes no room while there is nothing to say. */
public final class Says extends Label {

    /** @param style such as {@code line-trouble} */
    public Says(String id, String style, ObservableStringValue text) {
        setId(id);
        getStyleClass().add(style);
        setWrapText(true);
        setMinHeight(USE_PREF_SIZE);
        textProperty().bind(text);
        visibleProperty().bind(Bindings.isNotEmpty(text));
        managedProperty().bind(visibleProperty());
    }
}
