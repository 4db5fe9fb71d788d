package covewalk.app.forms;

import covewalk.app.text.Texts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;

/** A form, in as many columns as there is room for. Enter takes a line and goes on to the next one that is typed. */
public final class FormView extends FlowPane {

    private final List<LineView> views = new ArrayList<>();
    private final Map<String, BooleanSupplier> detours = new HashMap<>();
    private Runnable afterTheLast = () -> { };

    public FormView(Form<?> form) {
        getStyleClass().add("form");
        getStylesheets().add(FormView.class.getResource("forms.css").toExternalForm());
        Texts texts = form.texts();
        for (FormLine line : form.lines()) {
            String name = line.ask().name();
            int index = views.size();
            LineView view = new LineView(line, form.name() + "-" + name, texts, texts.get("line." + form.name() + "." + name),
                    texts.get("meaning." + form.name() + "." + name), () -> form.take(line), () -> goOn(name, index));
            views.add(view);
            getChildren().add(view);
        }
        parentProperty().addListener((property, before, now) -> {
            if (now == null) {
                form.takeAll();
            }
        });
    }

    /** @param next where the focus goes from the last line */
    public void setAfterTheLast(Runnable next) {
        afterTheLast = next;
    }

    /**
     * Another way to go on from a line than to the next.
     *
     * @param detour goes there, or says false where the usual way is to be gone
     */
    public void setAfter(String line, BooleanSupplier detour) {
        detours.put(line, detour);
    }

    public void focusFirst() {
        views.get(0).control().requestFocus();
    }

    private void goOn(String name, int from) {
        if (detours.getOrDefault(name, () -> false).getAsBoolean()) {
            return;
        }
        for (LineView view : views.subList(from + 1, views.size())) {
            Node control = view.control();
            if (control instanceof TextField field) {
                field.requestFocus();
                field.selectAll();
                return;
            }
        }
        afterTheLast.run();
    }
}
