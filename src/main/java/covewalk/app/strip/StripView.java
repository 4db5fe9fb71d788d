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
import javafx.scene.control.OverrunStyle;
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

    private final StripModel model;
    private final PicturePane picture = new PicturePane();
    private final Region mark = new Region();
    private final Pane strip = new Pane(picture, mark) {
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

    /** With its cove, how much it is amplified and what is pointed at in words. */
    public StripView(Desk desk) {
        this(desk, true);
    }

    /**
     * @param explained whether what is pointed at stands in words below it; {@link #saysProperty()} has it in any case
     */
    public StripView(Desk desk, boolean explained) {
        Texts texts = desk.texts(StripView.class);
        model = new StripModel(desk);
        getStyleClass().add("strip");
        setFillWidth(true);
        says.setId("strip-says");
        says.setWrapText(true);
        says.getStyleClass().add("strip-says");
        says.textProperty().bind(model.saysProperty());
        strip();
        Label empty = empty(texts);
        Button describe = new Button(texts.get("no-coves.go"));
        describe.setId("strip-describe");
        describe.setOnAction(event -> desk.go(Place.SITE));
        HBox none = new HBox(12, empty, describe);
        none.setAlignment(Pos.CENTER_LEFT);
        showWhen(none, () -> model.coveProperty().get() == null, model.coveProperty());
        showWhen(describe, () -> noCoves(desk), model.coveProperty(), model.judgement());
        HBox head = head(texts);
        showWhen(head, () -> model.coveProperty().get() != null, model.coveProperty());
        getChildren().addAll(head, strip, none);
        if (explained) {
            getChildren().add(says);
        }
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

    private Label empty(Texts texts) {
        Label empty = new Label();
        empty.setWrapText(true);
        empty.textProperty().bind(Bindings.createStringBinding(() -> texts.get(model.judgement().getValue() == null ? "judging" : "no-coves"),
                model.judgement()));
        return empty;
    }

    private static void showWhen(Region region, BooleanSupplier when, ObservableValue<?>... changes) {
        region.managedProperty().bind(Bindings.createBooleanBinding(when::getAsBoolean, changes));
        region.visibleProperty().bind(region.managedProperty());
    }

    private HBox head(Texts texts) {
        Label name = new Label();
        name.setId("strip-cove");
        name.textProperty().bind(model.nameProperty());
        name.setTextOverrun(OverrunStyle.ELLIPSIS);
        name.getStyleClass().add("strip-cove");
        name.setMinWidth(60);
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox head = new HBox(8, cove(texts, "before", false), cove(texts, "after", true), name, new LargerView(model, texts));
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private Button cove(Texts texts, String key, boolean onwards) {
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
            mark.resizeRelocate(Math.round(x) - 1, 0, 3, strip.getHeight());
        }
    }
}
