package covewalk.app.faults;

import covewalk.app.text.Texts;
import covewalk.verdict.limit.Verdict;
import java.util.List;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;

/** How many places have each verdict, which of them are listed, and in which order. */
final class FaultsFilter extends FlowPane {

    private final FaultsModel model;
    private final Texts texts;

    FaultsFilter(FaultsModel model, Texts texts) {
        super(4, 4);
        this.model = model;
        this.texts = texts;
        for (Verdict verdict : List.of(Verdict.BEYOND, Verdict.UNSETTLED, Verdict.WITHIN, Verdict.NOT_READ)) {
            getChildren().add(filter(verdict));
        }
        ToggleGroup orders = new ToggleGroup();
        getChildren().addAll(gap(), order(Order.WORST, orders), order(Order.WALKING, orders), gap());
    }

    private static Region gap() {
        Region gap = new Region();
        gap.setMinWidth(12);
        return gap;
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
}
