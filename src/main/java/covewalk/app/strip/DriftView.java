package covewalk.app.strip;

import covewalk.app.desk.Desk;
import covewalk.app.forms.Choices;
import covewalk.app.text.Texts;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * Says that light or meter drifts, and lets it be taken off the verdicts or left in: the choice beside the words, below them
 * where there is little room. Takes no room where nothing drifts.
 */
public final class DriftView extends VBox {

    private static final double NARROW_EM = 45;

    private final Label says = new Label();
    private final Choices<Boolean> choices;
    private final HBox row = new HBox(12);

    public DriftView(Desk desk) {
        super(4);
        Texts texts = desk.texts(DriftView.class);
        Drift model = new Drift(desk);
        says.setId("drift-says");
        says.setWrapText(true);
        says.setMinHeight(USE_PREF_SIZE);
        says.textProperty().bind(model.saysProperty());
        choices = new Choices<>("drift", texts.get("drift"), model.takenOffProperty(), model::takeOff, List.of(false, true),
                off -> off ? "off" : "in", off -> texts.get(off ? "drift.choose.off" : "drift.choose.in"));
        row.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(says, Priority.ALWAYS);
        says.setMaxWidth(Double.MAX_VALUE);
        widthProperty().addListener((property, before, now) -> turn());
        turn();
        visibleProperty().bind(Bindings.isNotEmpty(model.saysProperty()));
        managedProperty().bind(visibleProperty());
    }

    private void turn() {
        boolean narrow = getWidth() < NARROW_EM * says.getFont().getSize();
        choices.setMinWidth(narrow ? 0 : USE_PREF_SIZE);
        row.getChildren().clear(); // they must have left one place before they can take the other
        getChildren().clear();
        if (narrow) {
            getChildren().addAll(says, choices);
        } else {
            row.getChildren().addAll(says, choices);
            getChildren().add(row);
        }
    }
}
