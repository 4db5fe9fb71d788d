package covewalk.app.surveys;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.app.forms.Choices;
import covewalk.app.text.Texts;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;

/** What a person chooses for this computer: theme, size of text, language, lengths, sound. */
final class SettingsView extends FlowPane {

    private static final int STEP = 10;

    private final Desk desk;
    private final Texts texts;

    SettingsView(Desk desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
        getStyleClass().add("form");
        getChildren().addAll(
                choice("theme", List.of(Theme.values()), Theme::code, Settings::theme, Settings::with),
                new Named(texts.get("settings.text"), size()),
                choice("language", List.of(Locale.ENGLISH, Locale.GERMAN), Locale::getLanguage, Settings::language, Settings::with),
                choice("lengths", List.of(false, true), feet -> feet ? "feet" : "metres", Settings::feet, Settings::withFeet),
                choice("sound", List.of(true, false), on -> on ? "on" : "off", Settings::sound, Settings::withSound));
    }

    private <T> Named choice(String name, List<T> all, Function<T, String> code, Function<Settings, T> in,
                             BiFunction<Settings, T, Settings> with) {
        ObservableValue<T> chosen = Bindings.createObjectBinding(() -> in.apply(desk.settings()), desk.memoryProperty());
        String label = texts.get("settings." + name);
        return new Named(label, new Choices<>(name, label, chosen, one -> desk.choose(with.apply(desk.settings(), one)), all, code,
                one -> texts.get("choice." + name + "." + code.apply(one))));
    }

    private HBox size() {
        Label now = new Label();
        now.setId("text-size");
        now.textProperty().bind(Bindings.createStringBinding(() -> desk.settings().textPercent() + " %", desk.memoryProperty()));
        HBox row = new HBox(8, size("text-smaller", "settings.smaller", -STEP), now, size("text-larger", "settings.larger", STEP));
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private Button size(String id, String key, int step) {
        Button button = Named.button(id, texts.get(key), () -> desk.choose(desk.settings().withTextPercent(desk.settings().textPercent() + step)));
        int end = step < 0 ? Settings.SMALLEST : Settings.LARGEST;
        button.disableProperty().bind(Bindings.createBooleanBinding(() -> desk.settings().textPercent() == end, desk.memoryProperty()));
        return button;
    }
}
