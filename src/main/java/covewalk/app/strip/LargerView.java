package covewalk.app.strip;

import covewalk.app.text.Texts;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** How many times larger differences of colour are shown: the words, a slider, and the way back to what fits. */
final class LargerView extends VBox {

    private static final List<Integer> TIMES = List.of(1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 30, 40);

    private final StripModel model;
    private final Label caption = new Label();
    private final Slider slider = new Slider(0, TIMES.size() - 1, 0);
    private boolean following;

    LargerView(StripModel model, Texts texts) {
        super(2);
        this.model = model;
        setAlignment(Pos.TOP_RIGHT);
        setMinWidth(USE_PREF_SIZE);
        caption.setId("strip-larger-says");
        caption.textProperty().bind(Bindings.createStringBinding(() -> texts.count("larger", model.timesShownProperty().get()),
                model.timesShownProperty()));
        caption.setMinWidth(USE_PREF_SIZE);
        caption.setLabelFor(slider);
        slider.setId("strip-larger");
        slider.setAccessibleText(texts.get("larger.label"));
        slider.setBlockIncrement(1);
        slider.setMajorTickUnit(1);
        slider.setMinorTickCount(0);
        slider.setSnapToTicks(true);
        slider.setPrefWidth(150);
        slider.valueProperty().addListener((property, before, now) -> {
            if (!following) {
                model.timesProperty().set(TIMES.get((int) Math.round(now.doubleValue())));
            }
        });
        Button fit = new Button(texts.get("larger.fit"));
        fit.setId("strip-larger-fit");
        fit.setAccessibleText(texts.get("larger.fit.why"));
        fit.setMinWidth(USE_PREF_SIZE);
        fit.disableProperty().bind(model.timesProperty().isEqualTo(0));
        fit.setOnAction(event -> model.timesProperty().set(0));
        model.timesShownProperty().addListener((property, before, now) -> follow());
        follow();
        HBox choose = new HBox(8, slider, fit);
        choose.setAlignment(Pos.CENTER_RIGHT);
        getChildren().addAll(caption, choose);
    }

    /** The words alone, for where there is no room for more. */
    Label caption() {
        return caption;
    }

    private void follow() {
        following = true;
        slider.setValue(Math.max(0, TIMES.indexOf(model.timesShownProperty().get())));
        following = false;
    }
}
