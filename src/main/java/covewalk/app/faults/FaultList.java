package covewalk.app.faults;

import covewalk.app.desk.Desk;
import covewalk.app.strip.Finding;
import covewalk.app.strip.FindingWords;
import covewalk.app.text.Texts;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The list of findings, what of them is listed, and in which order. */
final class FaultList extends VBox {

    private final FaultsModel model;
    private final Texts texts;
    private final ListView<Finding> list = new ListView<>();
    private boolean following;

    FaultList(Desk desk, FaultsModel model, ToggleButton diagrams) {
        super(8);
        this.model = model;
        this.texts = desk.texts(FaultList.class);
        FlowPane verdicts = new FlowPane(4, 4);
        for (Verdict verdict : List.of(Verdict.BEYOND, Verdict.UNSETTLED, Verdict.WITHIN, Verdict.NOT_READ)) {
            verdicts.getChildren().add(filter(verdict));
        }
        ToggleGroup orders = new ToggleGroup();
        FlowPane order = new FlowPane(4, 4, order(Order.WORST, orders), order(Order.WALKING, orders), diagrams);
        FindingWords findings = new FindingWords(texts, desk.settings().feet());
        list.setId("faults-list");
        list.setAccessibleText(texts.get("list"));
        list.setCellFactory(view -> new FaultCell(texts, findings));
        Label empty = new Label(texts.get("list.empty"));
        empty.setWrapText(true);
        list.setPlaceholder(empty);
        VBox.setVgrow(list, Priority.ALWAYS);
        list.setMinHeight(0);
        getChildren().addAll(verdicts, order, list);
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

    private ToggleButton filter(Verdict verdict) {
        ToggleButton button = new ToggleButton();
        button.setId("faults-" + verdict.code());
        button.selectedProperty().bindBidirectional(model.listed(verdict));
        model.judgement().addListener((property, before, now) -> count(button, verdict));
        count(button, verdict);
        return button;
    }

    private void count(ToggleButton button, Verdict verdict) {
        button.setText(texts.get("filter", texts.numbers().fixed(model.count(verdict), 0), texts.words().verdict(verdict)));
    }

    private ToggleButton order(Order order, ToggleGroup group) {
        ToggleButton button = new ToggleButton(texts.get("order." + order.code()));
        button.setId("faults-order-" + order.code());
        button.setToggleGroup(group);
        button.setSelected(model.orderProperty().get() == order);
        button.setOnAction(event -> {
            model.orderProperty().set(order);
            button.setSelected(true); // one order there always is
        });
        return button;
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
