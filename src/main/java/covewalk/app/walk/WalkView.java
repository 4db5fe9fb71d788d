package covewalk.app.walk;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Spot;
import covewalk.app.parts.NumberPad;
import covewalk.app.text.Texts;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * The walk: strip on top, what is said and typed at the left, the number pad at the right, the actions below. In a window
 * that is higher than wide the pad stands under the fields. Where it gets tight the strip gets low; where it gets tighter still,
 * strip and actions scroll with what is said, so that the fields and the pad stay in sight.
 */
final class WalkView extends BorderPane {

    private static final PseudoClass TALL = PseudoClass.getPseudoClass("tall");
    private static final PseudoClass LOW = PseudoClass.getPseudoClass("low");
    private static final Insets BESIDE_PAD = new Insets(0, 6, 0, 0);
    private static final PseudoClass SMALL_KEYS = PseudoClass.getPseudoClass("small-keys");

    private final WalkModel model;
    private final Desk desk;
    private final StripPane strip;
    private final EntryPane entry;
    private final NumberPad pad;
    private final VBox reading = new VBox();
    private final StackPane left = new StackPane();
    private final InSight column = new InSight(left);
    private final Button spot = new Button();
    private final Texts texts;
    private final NotePane note;
    private final MorePane more;
    private final CorrectPane correct;
    private final Actions actions;
    private final InvalidationListener onSize = observable -> fit();
    private boolean tall;
    private Fit.Stays stays = Fit.Stays.ALL;

    WalkView(WalkModel model, Desk desk, Texts texts) {
        this.model = model;
        this.desk = desk;
        this.texts = texts;
        getStyleClass().add("walk");
        setMinSize(0, 0);
        strip = new StripPane(model, texts, desk::settings);
        entry = new EntryPane(model, texts);
        pad = new NumberPad(entry, new NumberPad.Says(texts.numbers().plain(0.5, 1).substring(1, 2), texts.get("pad.back"),
                texts.get("pad.sign"), texts.get("pad.next"), texts.get("pad.enter"), texts.get("pad.enter.says")));
        note = new NotePane(model, texts, this::type);
        correct = new CorrectPane(model, texts, this::type);
        more = new MorePane(model, texts, this::type, () -> turnTo(correct, correct::begin));
        reading.getStyleClass().add("walk-reading");
        spot.setId("walk-spot");
        StatusPane status = new StatusPane(model, texts);
        reading.getChildren().addAll(where(), new SentencePane(model, texts), entry, status);
        column.keep(entry, status.question());
        left.setMinSize(0, 0);
        left.getChildren().add(reading);
        setCenter(column);
        actions = new Actions(model, texts, () -> turnTo(note, note::begin), () -> turnTo(more, more::begin));
        KeptTone tone = new KeptTone();
        model.setOnKept(() -> {
            if (desk.settings().sound() && getScene() != null) {
                tone.sound();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        addEventFilter(KeyEvent.KEY_TYPED, this::typed);
        model.ending().offers().addListener((InvalidationListener) observable -> type());
        widthProperty().addListener(onSize);
        heightProperty().addListener(onSize);
        desk.memoryProperty().addListener(new WeakInvalidationListener(onSize));
        arrange();
        offerSpot();
    }

    private VBox where() {
        Label where = new Label();
        where.setId("walk-where");
        where.getStyleClass().add("walk-where");
        where.textProperty().bind(model.says().whereProperty());
        Label turn = new Label();
        turn.setId("walk-turn");
        turn.textProperty().bind(model.says().turnProperty());
        for (Label label : new Label[] {where, turn}) {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
            label.setAccessibleRole(AccessibleRole.TEXT);
        }
        spot.setOnAction(event -> model.way().lookedAtElsewhere().ifPresent(model.way()::follow));
        model.way().aimProperty().addListener(observable -> offerSpot());
        return new VBox(where, turn, spot);
    }

    private void offerSpot() {
        Optional<Spot> elsewhere = model.way().lookedAtElsewhere();
        spot.setVisible(elsewhere.isPresent());
        spot.setManaged(elsewhere.isPresent());
        elsewhere.ifPresent(there -> spot.setText(texts.get("spot", there.cove(), model.says().lengths().brief(there.positionM()))));
    }

    /** Somebody comes here. */
    void shown() {
        offerSpot();
        type();
    }

    /** Back to the fields, with the focus where the next digit is typed. */
    private void type() {
        left.getChildren().setAll(reading);
        if (model.way().aim() != null) {
            entry.focus(Entry.Field.FIRST);
            column.look();
        } else {
            reading.lookupAll(".main-action").stream().findFirst().ifPresent(Node::requestFocus);
        }
    }

    private void turnTo(Node sheet, Runnable begin) {
        if (left.getChildren().contains(sheet) || model.way().guide() == null) {
            type();
            return;
        }
        left.getChildren().setAll(sheet);
        column.setVvalue(0);
        begin.run();
    }

    private void pressed(KeyEvent event) {
        switch (event.getCode()) {
            case ESCAPE -> type();
            case PAGE_UP -> model.way().back();
            case PAGE_DOWN -> model.way().skip();
            default -> {
                return;
            }
        }
        event.consume();
    }

    /** A digit finds its field, whatever was touched last. */
    private void typed(KeyEvent event) {
        boolean digit = event.getCharacter().matches("[0-9.,+-]");
        if (digit && !(event.getTarget() instanceof TextInputControl) && left.getChildren().contains(reading) && model.way().aim() != null) {
            entry.type(event.getCharacter());
            event.consume();
        }
    }

    /** The pad never moves while one types: it stands at the right, or just above the actions. */
    private void arrange() {
        pseudoClassStateChanged(TALL, tall);
        BorderPane.setMargin(column, tall ? Insets.EMPTY : BESIDE_PAD);
        setTop(null);
        setRight(null);
        setBottom(null);
        column.scrollWith(stays == Fit.Stays.ALL ? List.of() : stays == Fit.Stays.PAD ? List.of(actions, strip) : List.of(strip));
        if (stays == Fit.Stays.ALL) {
            setTop(strip);
        }
        if (tall) {
            setBottom(stays == Fit.Stays.PAD ? pad : new VBox(pad, actions));
        } else {
            setBottom(stays == Fit.Stays.PAD ? null : actions);
            setRight(pad);
        }
    }

    private void fit() {
        if (getWidth() <= 0 || getHeight() <= 0) {
            return;
        }
        Fit fit = Fit.of(getWidth(), getHeight(), desk.settings().textPercent());
        if (fit.tall() != tall || fit.stays() != stays) {
            tall = fit.tall();
            stays = fit.stays();
            arrange();
        }
        setStyle(String.format(Locale.ROOT, "-fx-font-size: %.1fpx;", fit.textPx()));
        pad.setPrefWidth(fit.padWidth());
        pad.setPrefHeight(fit.padHeight());
        pseudoClassStateChanged(LOW, fit.low());
        pseudoClassStateChanged(SMALL_KEYS, fit.smallKeys());
        strip.fit(fit.textPx(), fit.low());
    }
}
