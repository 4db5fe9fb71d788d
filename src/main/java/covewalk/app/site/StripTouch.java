package covewalk.app.site;

import covewalk.app.forms.Refusals;
import covewalk.app.forms.Writing;
import covewalk.app.text.Texts;
import covewalk.plot.Picture;
import covewalk.survey.Cove;
import covewalk.survey.Feed;
import covewalk.survey.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * A finger on the drawn cove: it takes hold of a joint or an end and moves it, or taps where a joint or a feed is to be.
 * Positions go in steps that a finger can set; the exact figure is typed.
 */
final class StripTouch {

    /** How far from a joint a finger may come down, mm of the drawing: it is some 5 mm wide itself. */
    private static final double FINGER_MM = 5;

    /** What a tap does. */
    enum Tap { CHOOSE, JOINT, FEED }

    private final CoveModel model;
    private final LayReel lay;
    private final Supplier<Writing> writing;
    private final Texts texts;
    private final ObjectProperty<Tap> tap = new SimpleObjectProperty<>(Tap.CHOOSE);
    private final ReadOnlyObjectWrapper<Picture> picture = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper says = new ReadOnlyStringWrapper("");
    private Boundary held;
    private Cove moved;
    private double pressedMm;

    StripTouch(CoveModel model, LayReel lay, Supplier<Writing> writing, Texts texts) {
        this.model = model;
        this.lay = lay;
        this.writing = writing;
        this.texts = texts;
        model.whenChanged(this::draw);
        model.placements().chosenProperty().addListener((property, before, now) -> draw());
        draw();
    }

    ObjectProperty<Tap> tapProperty() {
        return tap;
    }

    ReadOnlyObjectProperty<Picture> pictureProperty() {
        return picture.getReadOnlyProperty();
    }

    /** What the finger does, or did. */
    ReadOnlyStringProperty saysProperty() {
        return says.getReadOnlyProperty();
    }

    private void draw() {
        model.cove().ifPresent(this::draw);
    }

    private void draw(Cove cove) {
        int chosen = model.placements().chosenProperty().get();
        picture.set(new CoveDrawing(cove, writing.get(), texts).picture(chosen < 0 ? OptionalInt.empty() : OptionalInt.of(chosen)));
    }

    void press(double xMm) {
        Cove cove = model.cove().orElseThrow();
        pressedMm = xMm;
        moved = null;
        double withinM = CoveDrawing.atM(cove, CoveDrawing.x(cove, 0) + FINGER_MM);
        held = tap.get() == Tap.CHOOSE ? Boundary.near(cove, CoveDrawing.atM(cove, xMm), withinM).orElse(null) : null;
    }

    void drag(double xMm) {
        boolean still = moved == null && Math.abs(xMm - pressedMm) < 1;
        if (held != null && !still) {
            Cove cove = model.cove().orElseThrow();
            double to = held.reach(cove, writing.get().roughly(CoveDrawing.atM(cove, xMm)));
            moved = held.moved(cove, to);
            draw(moved);
            says.set(texts.get("strip.moving", writing.get().length(to)));
        }
    }

    void release(double xMm) {
        Cove cove = model.cove().orElseThrow();
        double at = writing.get().roughly(CoveDrawing.atM(cove, xMm));
        if (moved != null) {
            Cove there = moved;
            refuse(model.change(before -> there));
        } else if (tap.get() == Tap.JOINT) {
            lay.jointAt(at);
        } else if (tap.get() == Tap.FEED) {
            addFeed(Math.min(at, cove.lengthM()));
        } else {
            choose(cove, CoveDrawing.atM(cove, xMm));
        }
        held = null;
        moved = null;
        draw();
    }

    private void choose(Cove cove, double atM) {
        says.set("");
        Optional<Integer> there = cove.placementAt(atM).map(cove.placements()::indexOf);
        there.ifPresent(model.placements()::choose);
    }

    private void addFeed(double atM) {
        List<Feed> feeds = new ArrayList<>(model.cove().orElseThrow().feeds());
        feeds.add(new Feed(atM, "", ""));
        refuse(model.change(cove -> cove.withFeeds(feeds)));
        model.feeds().choose(feeds.size() - 1);
    }

    private void refuse(List<Problem> problems) {
        says.set(problems.isEmpty() ? "" : new Refusals(texts).sentences(problems));
    }
}
