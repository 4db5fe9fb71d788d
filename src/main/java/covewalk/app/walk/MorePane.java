package covewalk.app.walk;

import covewalk.app.text.Texts;
import covewalk.survey.Cove;
import covewalk.survey.Lengths;
import covewalk.survey.SetUp;
import covewalk.survey.Typed;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What is seldom wanted: what the meter shows, another position or cove, the way round, dark readings, corrections. */
final class MorePane extends VBox {

    private static final double LEAST_INTERVAL_M = 0.05;

    private final WalkModel model;
    private final Texts texts;
    private final Runnable done;
    private final TextField position = new TextField();
    private final TextField interval = new TextField();
    private final TextField cove = new TextField();
    private final Label answer = new Label();
    private final FlowPane choices = new FlowPane(16, 8);

    MorePane(WalkModel model, Texts texts, Runnable done, Runnable correct) {
        this.model = model;
        this.texts = texts;
        this.done = done;
        getStyleClass().add("walk-sheet");
        answer.setId("walk-more-answer");
        answer.setWrapText(true);
        Button dark = button("walk-dark", texts.get("more.dark"), () -> {
            done.run();
            model.way().dark();
        });
        getChildren().addAll(choices,
                row(field(position, "walk-position", texts.get("more.position")), button("walk-go", texts.get("more.go"), this::goTo),
                        field(interval, "walk-interval", texts.get("more.interval")), button("walk-every", texts.get("more.every"), this::every)),
                row(field(cove, "walk-cove", texts.get("more.cove")), button("walk-cove-go", texts.get("more.cove.go"), this::goToCove),
                        button("walk-cove-before", texts.get("more.cove.before"), () -> step(-1)),
                        button("walk-cove-after", texts.get("more.cove.after"), () -> step(1))),
                row(dark, button("walk-correct", texts.get("more.correct"), correct), button("walk-more-done", texts.get("sheet.done"), done)),
                answer);
        Label awake = new Label(texts.get("awake." + system()));
        awake.setId("walk-awake");
        awake.setWrapText(true);
        awake.getStyleClass().add("small");
        getChildren().add(awake);
        position.setOnAction(event -> goTo());
        interval.setOnAction(event -> every());
        cove.setOnAction(event -> goToCove());
    }

    /** JavaFX cannot keep a screen awake; the system can be told to. */
    private static String system() {
        String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        return name.contains("win") ? "windows" : name.contains("mac") ? "mac" : "linux";
    }

    private static FlowPane row(Node... nodes) {
        FlowPane row = new FlowPane(8, 8, nodes);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private static HBox field(TextField field, String id, String name) {
        field.setId(id);
        field.setPrefColumnCount(5);
        Label label = new Label(name);
        label.setLabelFor(field);
        HBox both = new HBox(6, label, field);
        both.setAlignment(Pos.CENTER_LEFT);
        return both;
    }

    private static Button button(String id, String text, Runnable act) {
        Button button = new Button(text);
        button.setId(id);
        button.setOnAction(event -> act.run());
        return button;
    }

    /** As things are now. */
    void begin() {
        MeterShows meter = model.entry().meter();
        Guide guide = model.way().guide();
        choices.getChildren().setAll(
                new Choices<>(texts.get("more.meter"), List.of(Shown.values()), pair -> "walk-shows-" + pair.code(),
                        pair -> pair.first() + ", " + pair.second(), meter.pair(), pair -> use(now -> now.with(pair))),
                new Choices<>(texts.get("more.decimals"), List.of(3, 4, 5), n -> "walk-decimals-" + n, n -> Integer.toString(n),
                        meter.decimals(), n -> use(now -> now.withDecimals(n))),
                new Choices<>(texts.get("more.lux"), List.of(false, true), yes -> yes ? "walk-lux-yes" : "walk-lux-no",
                        yes -> yes ? texts.get("more.yes") : texts.get("more.no"), meter.lux(), yes -> use(now -> now.withLux(yes))),
                new Choices<>(texts.get("more.way"), List.of(false, true), far -> far ? "walk-way-far" : "walk-way-datum",
                        far -> far ? texts.get("more.way.far") : texts.get("more.way.datum"), guide.backwards(),
                        far -> model.way().change(way -> way.turn(far))));
        List<String> setUps = model.survey().survey().setUps().stream().map(SetUp::id).toList();
        if (setUps.size() > 1) {
            choices.getChildren().add(new Choices<>(texts.get("more.setup"), setUps, id -> "walk-setup-" + id, id -> id, guide.setUp(),
                    id -> model.way().change(way -> way.use(id))));
        }
        answer.setText("");
        position.setText("");
        interval.setText(texts.numbers().plain(guide.intervalM(), 2));
        cove.setText(model.way().aim() == null ? "" : model.way().aim().cove());
        position.requestFocus();
    }

    private void use(UnaryOperator<MeterShows> change) {
        model.use(change.apply(model.entry().meter()));
        answer.setText(model.entry().meter().decimals() == MeterShows.FEWEST ? texts.get("more.coarse") : "");
    }

    private void goTo() {
        answer.setText(model.goTo(position.getText()));
        leave();
    }

    private void every() {
        Optional<Typed> metres = Lengths.metres(interval.getText()).filter(length -> length.value() >= LEAST_INTERVAL_M);
        metres.ifPresent(length -> model.way().change(way -> way.every(length.value())));
        answer.setText(metres.isPresent() ? "" : texts.get("position.no-length", interval.getText().strip()));
        leave();
    }

    private void goToCove() {
        Optional<Cove> there = model.survey().survey().cove(cove.getText().strip());
        there.ifPresent(model::begin);
        answer.setText(there.isPresent() ? "" : texts.get("more.no-cove", cove.getText().strip()));
        leave();
    }

    /** To the cove before or after this one, in the order of the survey. */
    private void step(int by) {
        List<Cove> coves = model.survey().survey().coves();
        int at = coves.stream().map(Cove::id).toList().indexOf(cove.getText().strip());
        if (!coves.isEmpty()) {
            cove.setText(coves.get(Math.floorMod(Math.max(at, 0) + by, coves.size())).id());
        }
    }

    private void leave() {
        if (answer.getText().isEmpty()) {
            done.run();
        }
    }
}
