package covewalk.app.forms;

import covewalk.app.parts.Wrapped;
import covewalk.app.text.Texts;
import covewalk.survey.Problem;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A list of things, and below it the form of the one that is chosen. */
public final class ItemsView<T> extends VBox {

    private static final int MOST_ROWS = 5;

    private final Items<T> items;
    private final Texts texts;
    private final ListView<T> list;
    private final ReadOnlyStringWrapper whyKept = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper trouble = new ReadOnlyStringWrapper("");
    private Function<T, String> kept = thing -> "";

    /**
     * @param title of one thing, for the list
     * @param empty what to do next where there is nothing
     * @param remove what the button that takes the chosen one out says
     */
    public ItemsView(Items<T> items, Form<T> form, Function<T, String> title, String empty, String remove) {
        this.items = items;
        this.texts = form.texts();
        getStyleClass().add("items");
        getStylesheets().add(ItemsView.class.getResource("forms.css").toExternalForm());
        list = new ListView<>(items.items());
        list.setId(form.name() + "-list");
        list.setAccessibleText(texts.get("items." + form.name()));
        list.setPlaceholder(new Wrapped(empty));
        list.setCellFactory(view -> new TitleCell<>(title));
        list.getSelectionModel().selectedIndexProperty().addListener((property, before, now) -> items.choose(now.intValue()));
        items.chosenProperty().addListener((property, before, now) -> choose(now.intValue()));
        items.items().addListener((ListChangeListener<T>) change -> fit());
        Button out = new Button(remove);
        out.setId(form.name() + "-remove");
        out.setOnAction(event -> say(items.removeChosen()));
        out.disableProperty().bind(items.chosenProperty().lessThan(0).or(whyKept.isNotEmpty()));
        FormView view = new FormView(form);
        view.visibleProperty().bind(items.chosenProperty().greaterThanOrEqualTo(0));
        view.managedProperty().bind(view.visibleProperty());
        getChildren().addAll(list, new FlowPane(8, 8, out, new Says(form.name() + "-kept", "small", whyKept)), new Says(form.name() + "-list-trouble", "line-trouble", trouble), view);
        items.chosenProperty().addListener((property, before, now) -> keep());
        items.items().addListener((ListChangeListener<T>) change -> keep());
        choose(items.chosenProperty().get());
        fit();
        keep();
    }

    /** @param why a thing of the list cannot be taken out; empty where it can */
    public ItemsView<T> withKept(Function<T, String> why) {
        kept = why;
        keep();
        return this;
    }

    private void keep() {
        whyKept.set(items.chosen().map(kept).orElse(items.items().isEmpty() ? "" : texts.get("items.choose")));
    }

    /** A button that puts one more in, beside the one that takes out. */
    public Button withAdd(String text, Supplier<T> fresh) {
        Button add = new Button(text);
        add.setId(list.getId().replace("-list", "-add"));
        add.setOnAction(event -> say(items.add(fresh.get())));
        ((FlowPane) getChildren().get(1)).getChildren().add(0, add);
        return add;
    }

    private void say(List<Problem> problems) {
        trouble.set(new Refusals(texts).sentences(problems));
    }

    private void choose(int index) {
        if (index < 0) {
            list.getSelectionModel().clearSelection();
        } else if (index != list.getSelectionModel().getSelectedIndex()) {
            list.getSelectionModel().select(index);
            list.scrollTo(Math.max(0, index - 1));
        }
    }

    /** As high as its rows, and never higher than a few. */
    private void fit() {
        int rows = Math.max(1, Math.min(MOST_ROWS, items.items().size()));
        list.setStyle(String.format(Locale.ROOT, "-fx-pref-height: %.2fem;", rows * 3.0 + 0.3));
    }

    /** One row. */
    private static final class TitleCell<T> extends ListCell<T> {

        private final Function<T, String> title;

        TitleCell(Function<T, String> title) {
            this.title = title;
            setPrefWidth(0); // as wide as the list: a long title ends in dots
        }

        @Override
        protected void updateItem(T item, boolean empty) {
            super.updateItem(item, empty);
            setText(empty || item == null ? "" : title.apply(item));
        }
    }
}
