package covewalk.app.strip;

import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.parts.PicturePane;
import covewalk.app.text.Texts;
import covewalk.verdict.CoveJudgement;
import java.util.function.BooleanSupplier;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The cove that is looked at as a strip, wherever a cove is worked on. It follows {@link Desk#spotProperty()}, and sets it
 * where somebody taps.
 */
public final class StripView extends VBox {

    /** Text of 2.6 mm then stands at four fifths of the usual size: 12 px and more from 100 % on. */
    private static final double MM_PER_EM = 3.25;
    private static final double NARROW_EM = 45;
    /** From the scale to above the marks of joints. */
    private static final double MARK_FROM_MM = 3.6;
    private static final double MARK_TO_MM = 19;

    private final StripModel model;
    private final PicturePane picture = new PicturePane();
    private final Region mark = new Region();
    private final Pane strip = new Pane(mark, picture) {
        @Override
        protected void layoutChildren() {
            layOut();
        }

        @Override
        protected double computePrefHeight(double width) {
            return model.pictureProperty().get() == null ? 0 : model.pictureProperty().get().heightMm() * pixelsPerMm();
        }
    };
    private final Label says = new Label();
    private final Texts texts;

    /** With ways to other coves and to more or less amplification. */
    public StripView(Desk desk) {
        this(desk, true);
    }

    /** @param withControls whether there is room for more than the strip and a line that says which one it is */
    public StripView(Desk desk, boolean withControls) {
        texts = desk.texts(StripView.class);
        model = new StripModel(desk);
        getStyleClass().add("strip");
        says.setId("strip-says");
        says.setWrapText(true);
        says.setAlignment(Pos.TOP_LEFT);
        says.getStyleClass().add("strip-says");
        says.textProperty().bind(model.saysProperty());
        strip();
        Region head = withControls ? head() : new HBox(16, name(), new LargerView(model, texts).caption());
        showWhen(head, () -> model.coveProperty().get() != null, model.coveProperty());
        getChildren().addAll(head, strip, none(desk));
        sceneProperty().addListener((property, before, now) -> model.seen(now != null));
    }

    /** What is pointed at, else what is looked at, in words. */
    public ObservableValue<String> saysProperty() {
        return model.saysProperty();
    }

    /** The cove shown; null before the first judgement, and where none is described. */
    public ObservableValue<CoveJudgement> coveProperty() {
        return model.coveProperty();
    }

    private static boolean noCoves(Desk desk) {
        return desk.survey() != null && desk.survey().survey().coves().isEmpty();
    }

    /** Where there is no cove to draw, what to do about it. */
    private HBox none(Desk desk) {
        Label why = new Label();
        why.setWrapText(true);
        why.textProperty().bind(Bindings.createStringBinding(() -> texts.get(model.judgement().getValue() == null ? "judging" : "no-coves"),
                model.judgement()));
        Button describe = new Button(texts.get("no-coves.go"));
        describe.setId("strip-describe");
        describe.setOnAction(event -> desk.go(Place.SITE));
        showWhen(describe, () -> noCoves(desk), model.coveProperty(), model.judgement());
        HBox none = new HBox(12, why, describe);
        none.setAlignment(Pos.CENTER_LEFT);
        showWhen(none, () -> model.coveProperty().get() == null, model.coveProperty());
        return none;
    }

    private static void showWhen(Region region, BooleanSupplier when, ObservableValue<?>... changes) {
        region.managedProperty().bind(Bindings.createBooleanBinding(when::getAsBoolean, changes));
        region.visibleProperty().bind(region.managedProperty());
    }

    /** Where it is narrow, the amplification stands below the words. */
    private Region head() {
        VBox words = new VBox(2, name(), says);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox line = new HBox(8, cove("before", false), cove("after", true), words);
        line.setAlignment(Pos.TOP_LEFT);
        LargerView larger = new LargerView(model, texts);
        VBox head = new VBox(4, line);
        line.getChildren().add(larger);
        widthProperty().addListener((property, before, now) -> {
            boolean narrow = now.doubleValue() < NARROW_EM * says.getFont().getSize();
            if (narrow == line.getChildren().contains(larger)) {
                (narrow ? line : head).getChildren().remove(larger);
                (narrow ? head : line).getChildren().add(larger);
            }
        });
        return head;
    }

    private Label name() {
        Label name = new Label();
        name.setId("strip-cove");
        name.textProperty().bind(model.nameProperty());
        name.getStyleClass().add("strip-cove");
        name.setMinWidth(0);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        return name;
    }

    private Button cove(String key, boolean onwards) {
        Button button = new Button(texts.get(onwards ? "after" : "before"));
        button.setId("strip-cove-" + key);
        button.setAccessibleText(texts.get(onwards ? "after.says" : "before.says"));
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> model.otherCove(onwards));
        button.disableProperty().bind(Bindings.createBooleanBinding(
                () -> model.judgement().getValue() == null || model.judgement().getValue().coves().size() < 2, model.judgement()));
        return button;
    }

    private void strip() {
        strip.setMinHeight(USE_PREF_SIZE);
        strip.setId("strip-picture");
        strip.getStyleClass().add("strip-picture");
        strip.setFocusTraversable(true);
        strip.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        mark.getStyleClass().add("strip-mark");
        mark.setMouseTransparent(true);
        mark.setManaged(false);
        picture.setManaged(false);
        picture.pictureProperty().bind(model.pictureProperty());
        model.pictureProperty().addListener((property, before, now) -> strip.requestLayout());
        model.spotMmProperty().addListener((property, before, now) -> strip.requestLayout());
        model.saysProperty().addListener((property, before, now) -> strip.setAccessibleText(model.nameProperty().get() + ". " + now));
        strip.setOnMouseMoved(event -> model.point(event.getX() / pixelsPerMm()));
        strip.setOnMouseExited(event -> model.leave());
        strip.setOnMouseClicked(event -> {
            strip.requestFocus();
            model.tap(event.getX() / pixelsPerMm());
        });
        strip.setOnKeyPressed(this::key);
    }

    private void key(KeyEvent event) {
        switch (event.getCode()) {
            case LEFT -> model.step(false);
            case RIGHT -> model.step(true);
            case PAGE_UP -> model.otherCove(false);
            case PAGE_DOWN -> model.otherCove(true);
            default -> {
                return;
            }
        }
        event.consume();
    }

    private double pixelsPerMm() {
        return says.getFont().getSize() / MM_PER_EM;
    }

    private void layOut() {
        double width = strip.getWidth();
        model.widthMm(width / pixelsPerMm());
        if (model.pictureProperty().get() != null) {
            picture.resizeRelocate(0, 0, width, strip.getHeight());
            double x = model.spotMmProperty().get() * pixelsPerMm();
            mark.setVisible(!Double.isNaN(x));
            mark.resizeRelocate(Math.round(x) - 1, MARK_FROM_MM * pixelsPerMm(), 3, (MARK_TO_MM - MARK_FROM_MM) * pixelsPerMm());
        }
    }
}
