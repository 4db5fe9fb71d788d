package covewalk.app.parts;

import covewalk.plot.Picture;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;

/** A picture as wide as there is room for; whoever cannot see it has the picture's words. */
public final class PicturePane extends Region {

    private final Canvas canvas = new Canvas();
    private final Inks inks;
    private final ObjectProperty<Picture> picture = new SimpleObjectProperty<>();
    private final double mostPixelsPerMm;

    /** A picture that grows without end. */
    public PicturePane() {
        this(Double.MAX_VALUE);
    }

    /** @param mostPixelsPerMm the largest it is drawn at */
    public PicturePane(double mostPixelsPerMm) {
        this.mostPixelsPerMm = mostPixelsPerMm;
        this.inks = new Inks(this);
        getStyleClass().add("picture");
        getChildren().add(canvas);
        canvas.setManaged(false);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(0, 0);
        picture.addListener((property, before, now) -> {
            setAccessibleText(now == null ? "" : now.says());
            requestLayout();
        });
        inks.changed(this::requestLayout);
    }

    public ObjectProperty<Picture> pictureProperty() {
        return picture;
    }

    public void show(Picture shown) {
        picture.set(shown);
    }

    private double scale(double width) {
        return Math.min(mostPixelsPerMm, width / picture.get().widthMm());
    }

    Inks inks() {
        return inks;
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return Inks.cssMetaData();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        return picture.get() == null ? 0 : picture.get().widthMm() * Math.min(mostPixelsPerMm, 4);
    }

    @Override
    protected double computePrefHeight(double width) {
        return picture.get() == null ? 0 : picture.get().heightMm() * scale(width < 0 ? prefWidth(-1) : width);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        double scale = Optional.ofNullable(picture.get()).map(shown -> scale(getWidth())).orElse(0.0);
        canvas.setWidth(picture.get() == null ? 0 : Math.ceil(picture.get().widthMm() * scale)); // whole pixels are cleared wholly
        canvas.setHeight(picture.get() == null ? 0 : Math.ceil(picture.get().heightMm() * scale));
        canvas.getGraphicsContext2D().clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (picture.get() != null && scale > 0) {
            new Painter(canvas.getGraphicsContext2D(), inks, scale).paint(picture.get());
        }
    }
}
