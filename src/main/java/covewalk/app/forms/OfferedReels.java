package covewalk.app.forms;

import covewalk.survey.Reel;
import java.util.function.Consumer;
import javafx.beans.Observable;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;

/** Reels that may be meant, one touch each; nothing is chosen that was not touched. Takes no room where there are none. */
public final class OfferedReels extends FlowPane {

    private static final int LONGEST = 60;

    private final ObservableList<Reel> offered;
    private final ReelLine labels;
    private final Consumer<Reel> picked;

    public OfferedReels(ObservableList<Reel> offered, ReelLine labels, Consumer<Reel> picked) {
        super(6, 6);
        this.offered = offered;
        this.labels = labels;
        this.picked = picked;
        offered.addListener((Observable list) -> show());
        show();
    }

    private void show() {
        getChildren().setAll(offered.stream().map(this::button).toList());
        setManaged(!offered.isEmpty());
    }

    private Button button(Reel one) {
        String label = labels.of(one);
        Button button = new Button(label.length() <= LONGEST ? label : label.substring(0, LONGEST - 1) + "\u2026");
        button.setAccessibleText(label);
        button.setOnAction(event -> picked.accept(one));
        return button;
    }
}
