package covewalk.app.faults;

import covewalk.app.strip.Finding;
import covewalk.app.strip.FindingWords;
import covewalk.app.text.Texts;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The list of findings. */
final class FaultList extends VBox {

    private final FaultsModel model;
    private final ListView<Finding> list = new ListView<>();
    private boolean following;

    /** @param words in the unit that is chosen when they are asked for */
    FaultList(Texts texts, Supplier<FindingWords> words, FaultsModel model) {
        this.model = model;
        list.setId("faults-list");
        list.setAccessibleText(texts.get("list"));
        list.setCellFactory(view -> new FaultCell(texts, words));
        sceneProperty().addListener((property, before, now) -> list.refresh()); // another unit may have been chosen meanwhile
        Label empty = new Label(texts.get("list.empty"));
        empty.setWrapText(true);
        list.setPlaceholder(empty);
        VBox.setVgrow(list, Priority.ALWAYS);
        list.setMinHeight(0);
        getChildren().add(list);
        list.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> {
            if (!following && now != null) {
                model.choose(now);
            }
        });
        model.shownProperty().addListener((property, before, now) -> follow());
        model.chosenProperty().addListener((property, before, now) -> follow());
        follow();
    }

    void focus() {
        list.requestFocus();
    }

    private void follow() {
        following = true;
        if (!list.getItems().equals(model.shownProperty().get())) {
            list.getItems().setAll(model.shownProperty().get());
        }
        int at = list.getItems().indexOf(model.chosenProperty().get());
        if (at >= 0) {
            list.getSelectionModel().clearAndSelect(at);
            list.getFocusModel().focus(at);
        } else {
            list.getSelectionModel().clearSelection();
        }
        following = false;
    }
}
