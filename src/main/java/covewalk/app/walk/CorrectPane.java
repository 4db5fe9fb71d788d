package covewalk.app.walk;

import covewalk.app.text.Texts;
import covewalk.survey.Reading;
import covewalk.survey.Typed;
import covewalk.survey.TypedColour;
import covewalk.survey.TypedPair;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Goes through the readings of a cove, the latest first, to correct one or take it back. */
final class CorrectPane extends VBox {

    private final WalkModel model;
    private final Texts texts;
    private final Label says = new Label();
    private final Button earlier = new Button();
    private final Button later = new Button();
    private final Button correct = new Button();
    private final Button takeBack = new Button();
    private List<Reading> readings = List.of();
    private int at;

    CorrectPane(WalkModel model, Texts texts, Runnable done) {
        this.model = model;
        this.texts = texts;
        getStyleClass().add("walk-sheet");
        Label title = new Label(texts.get("correct.title"));
        title.getStyleClass().add("heading");
        says.setId("walk-correct-says");
        says.setWrapText(true);
        says.getStyleClass().add("walk-where");
        name(earlier, "walk-correct-earlier", texts.get("correct.earlier"), () -> show(at - 1));
        name(later, "walk-correct-later", texts.get("correct.later"), () -> show(at + 1));
        name(correct, "walk-correct-this", texts.get("correct.this"), () -> {
            done.run();
            model.correct(readings.get(at));
        });
        name(takeBack, "walk-correct-withdraw", texts.get("correct.withdraw"), () -> {
            done.run();
            model.takeBack(readings.get(at));
        });
        Button close = new Button();
        name(close, "walk-correct-done", texts.get("sheet.done"), done);
        getChildren().addAll(title, says, new FlowPane(8, 8, earlier, later, correct, takeBack), close);
    }

    private static void name(Button button, String id, String text, Runnable act) {
        button.setId(id);
        button.setText(text);
        button.setOnAction(event -> act.run());
    }

    void begin() {
        readings = model.correctable();
        show(readings.size() - 1);
        earlier.requestFocus();
    }

    private void show(int index) {
        at = Math.max(0, Math.min(readings.size() - 1, index));
        boolean none = readings.isEmpty();
        earlier.setDisable(none || at == 0);
        later.setDisable(none || at == readings.size() - 1);
        correct.setDisable(none || !model.canCorrect(readings.get(at)));
        takeBack.setDisable(none);
        says.setText(none ? texts.get("correct.none") : inWords(readings.get(at)));
    }

    private String inWords(Reading reading) {
        TypedColour colour = reading.colour().orElseThrow();
        String digits = Stream.of(colour.xy(), colour.uvPrime(), colour.cctDuv()).flatMap(Optional::stream).map(CorrectPane::digits)
                .collect(Collectors.joining("; "));
        String lux = reading.lux().map(Typed::text).map(text -> texts.get("correct.lux", text)).orElse("");
        String note = reading.note().isEmpty() ? "" : texts.get("correct.note", reading.note());
        return texts.get("correct.reading", reading.id(), model.says().lengths().brief(reading.positionM().value()), digits + lux,
                reading.takenAt().replace('T', ' ')) + note;
    }

    private static String digits(TypedPair pair) {
        return pair.first().text() + "  " + pair.second().text();
    }
}
