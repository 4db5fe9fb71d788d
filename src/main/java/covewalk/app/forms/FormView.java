package covewalk.app.forms;

import covewalk.app.text.Texts;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;

/** A form, in as many columns as there is room for. Enter takes a line and goes on to the next one that is typed. */
public final class FormView extends FlowPane {

    private final List<LineView> views = new ArrayList<>();
    private Runnable afterTheLast = () -> { };

    public FormView(Form<?> form) {
        getStyleClass().add("form");
        getStylesheets().add(FormView.class.getResource("forms.css").toExternalForm());
        Texts texts = form.texts();
        for (FormLine line : form.lines()) {
            String name = line.ask().name();
            int index = views.size();
            LineView view = new LineView(line, form.name() + "-" + name, texts, texts.get("line." + form.name() + "." + name),
                    texts.get("meaning." + form.name() + "." + name), () -> form.take(line), () -> goOn(index));
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

    public void focusFirst() {
        views.get(0).control().requestFocus();
    }

    private void goOn(int from) {
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
