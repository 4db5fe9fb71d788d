package covewalk.app.walk;

import covewalk.app.text.Texts;
import javafx.animation.PauseTransition;
import javafx.beans.InvalidationListener;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** Below the fields: a question about what was typed, that a reading was kept, what is not on disk, the numbers. */
final class StatusPane extends VBox {

    private static final Duration SEEN = Duration.seconds(2);

    private final WalkModel model;
    private final Texts texts;
    private final Label question;
    private final FlowPane offers = new FlowPane(8, 8);
    private final Button takeBack = new Button();
    private final PauseTransition seen = new PauseTransition(SEEN);

    StatusPane(WalkModel model, Texts texts) {
        this.model = model;
        this.texts = texts;
        getStyleClass().add("walk-status");
        question = label("walk-question", "walk-question");
        model.says().question().addListener((property, before, now) -> question.setText(inWords(now)));
        model.says().question().addListener((property, before, now) -> show(question, now != null));
        show(question, false);
        Label held = label("walk-held", "walk-held");
        follow(held, model.says().heldProperty());
        Label kept = label("walk-kept", "walk-kept");
        follow(kept, model.says().keptProperty());
        seen.setOnFinished(event -> model.says().keptWasSeen());
        model.says().keptProperty().addListener((property, before, now) -> {
            if (!now.isEmpty()) {
                seen.playFromStart();
            }
        });
        Label numbers = label("walk-numbers", "small");
        numbers.textProperty().bind(model.says().numbersProperty());
        numbers.visibleProperty().bind(model.says().question().isNull());
        numbers.managedProperty().bind(numbers.visibleProperty());
        Label due = label("walk-due", "small");
        due.textProperty().bind(model.says().dueProperty());
        due.visibleProperty().bind(model.says().dueNowProperty().and(model.says().question().isNull()));
        due.managedProperty().bind(due.visibleProperty());
        takeBack.setId("walk-take-back");
        takeBack.setText(texts.get("action.take-back"));
        takeBack.setOnAction(event -> model.takeBack());
        FlowPane row = new FlowPane(16, 4, takeBack, kept, held);
        row.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(question, offers, numbers, due, row);
        model.ending().offers().addListener((InvalidationListener) observable -> offer());
        model.way().aimProperty().addListener(observable -> enable());
        model.says().numbersProperty().addListener(observable -> enable());
        offer();
        enable();
    }

    /** Where it is asked about what was typed. */
    Node question() {
        return question;
    }

    private static Label label(String id, String style) {
        Label label = new Label();
        label.setId(id);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        label.setAccessibleRole(AccessibleRole.TEXT);
        return label;
    }

    private static void show(Label label, boolean shown) {
        label.setVisible(shown);
        label.setManaged(shown);
    }

    private static void follow(Label label, ObservableValue<String> text) {
        label.textProperty().bind(text);
        text.addListener((property, before, now) -> show(label, !now.isEmpty()));
        show(label, !text.getValue().isEmpty());
    }

    /** What may be kept as it is says so. */
    private String inWords(Question question) {
        return question == null ? "" : question.refused() || model.entry().isHandedOver() || model.entry().isBlank() ? question.says()
                : texts.get("question.keep", question.says());
    }

    private void enable() {
        takeBack.setDisable(model.latest().isEmpty());
    }

    private void offer() {
        boolean none = model.ending().offers().isEmpty();
        offers.setManaged(!none);
        offers.setVisible(!none);
        offers.getChildren().setAll(model.ending().offers().stream().map(StatusPane::button).toList());
        if (!none) {
            offers.getChildren().get(0).getStyleClass().add("main-action");
        }
    }

    static Button button(Offer offer) {
        Button button = new Button(offer.button());
        button.setId(offer.id());
        button.setOnAction(event -> offer.take().run());
        return button;
    }
}
