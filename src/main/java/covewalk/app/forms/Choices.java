package covewalk.app.forms;

import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;

/** A few things of which one is chosen, side by side: none hides in a list that opens. */
public final class Choices<T> extends FlowPane {

    private final ObservableValue<T> chosen;

    /**
     * @param id of the row; each button has it with its word behind
     * @param chosen which one it is, whatever is pressed
     * @param choose told what is pressed
     */
    public Choices(String id, String label, ObservableValue<T> chosen, Consumer<T> choose, Iterable<T> all,
                   Function<T, String> code, Function<T, String> text) {
        this.chosen = chosen;
        setId(id);
        getStyleClass().add("choices");
        getStylesheets().add(Choices.class.getResource("forms.css").toExternalForm());
        ToggleGroup group = new ToggleGroup();
        for (T one : all) {
            ToggleButton button = new ToggleButton(text.apply(one));
            button.setId(id + "-" + code.apply(one));
            button.setToggleGroup(group);
            button.setUserData(one);
            button.setAccessibleText(label + ": " + button.getText());
            button.setOnAction(event -> {
                choose.accept(one);
                mark();
            });
            getChildren().add(button);
        }
        chosen.addListener((property, before, now) -> mark());
        mark();
    }

    private void mark() {
        getChildren().forEach(button -> ((ToggleButton) button).setSelected(Objects.equals(button.getUserData(), chosen.getValue())));
    }
}
