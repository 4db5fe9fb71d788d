package covewalk.app.walk;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;

/** A few things of which one is chosen, side by side and named. */
final class Choices<T> extends HBox {

    private final ToggleGroup group = new ToggleGroup();

    Choices(String name, List<T> all, Function<T, String> id, Function<T, String> text, T chosen, Consumer<T> choose) {
        super(4);
        getStyleClass().add("walk-choices");
        Label label = new Label(name);
        label.setMinWidth(USE_PREF_SIZE);
        getChildren().add(label);
        for (T one : all) {
            ToggleButton button = new ToggleButton(text.apply(one));
            button.setId(id.apply(one));
            button.setUserData(one);
            button.setToggleGroup(group);
            button.setSelected(one.equals(chosen));
            button.setAccessibleText(name + " " + button.getText());
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(event -> {
                button.setSelected(true); // one of them is always chosen
                choose.accept(one);
            });
            getChildren().add(button);
        }
    }

    void show(T chosen) {
        group.getToggles().forEach(toggle -> toggle.setSelected(toggle.getUserData().equals(chosen)));
    }
}
